namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>Unit a laboratory prints.</summary>
public enum ReportingUnit
{
    /// <summary>Milligrams per kilogram of dry soil; parts per million by mass.</summary>
    MilligramsPerKilogram,

    /// <summary>Milligrams per cubic decimetre of soil: by volume, never the same as by mass.</summary>
    MilligramsPerCubicDecimetre,

    /// <summary>Pounds per acre, by the laboratory's convention (normally two million pounds of soil).</summary>
    PoundsPerAcre,

    /// <summary>Kilograms per hectare.</summary>
    KilogramsPerHectare,

    /// <summary>Milliequivalents per 100 g, the same number as cmol of charge per kg.</summary>
    MilliequivalentsPer100Grams,

    /// <summary>Milliequivalents per 100 cm3 of soil: by volume, never the same as by mass.</summary>
    MilliequivalentsPer100CubicCentimetres,

    /// <summary>Percent by mass.</summary>
    Percent,

    /// <summary>Decisiemens per metre, the same number as mmho/cm.</summary>
    DecisiemensPerMetre,

    /// <summary>Units of pH.</summary>
    PhUnits,

    /// <summary>A laboratory's own index: comparable only with limits in the same index.</summary>
    Index,

    /// <summary>Milligrams of calcium carbonate per kilogram of soil for one unit of pH.</summary>
    MilligramsPerKilogramAndPh,
}
