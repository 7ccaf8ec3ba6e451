namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Which line of the report a lime method takes its amount from. The soil pH says whether; this says how much.</summary>
public enum LimeReads
{
    /// <summary>pH of a named buffer.</summary>
    BufferPh,

    /// <summary>Exchangeable acidity found with a named buffer, meq/100 g.</summary>
    Acidity,

    /// <summary>Lime buffer capacity by a single addition of calcium hydroxide.</summary>
    LimeBufferCapacity,

    /// <summary>Only the soil pH and the texture: rough, or for organic soils.</summary>
    SoilPh,
}
