using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using UnitsNet;

namespace SoilAdvisor.PublishedChecks;

/// <summary>A reading as a guide's own table states it: what was measured, how, in which unit, on which soil and for which crop.</summary>
internal record PrintedReading
{
    public required string Analyte { get; init; }

    public required string Unit { get; init; }

    public string? Extractant { get; init; }

    public string? Detection { get; init; }

    public string? Method { get; init; }

    public string? CropGroup { get; init; }

    public string? Texture { get; init; }

    public string? Subregion { get; init; }

    /// <summary>Exchange capacity of the sample, meq/100 g.</summary>
    public decimal? Cec { get; init; }

    /// <summary>pH of the sample in water.</summary>
    public decimal? Ph { get; init; }

    /// <summary>Phosphorus of the sample in the same extract and unit, where limits of another nutrient hang on it.</summary>
    public decimal? Phosphorus { get; init; }

    public string? Timing { get; init; }

    /// <summary>Lower end of the sampled layer, in; the layer begins at the surface.</summary>
    public double? DepthTo { get; init; }

    public (SoilTest Test, Reading Reading) Test(decimal value)
    {
        var analyte = Words.Analytes.Read(Analyte).Value;
        var reading = new Reading(analyte, Amount.Measured(value), Words.Units.Read(Unit).Value, MethodOf(analyte), "published table");
        var readings = new List<Reading> { reading };
        if (Cec is { } cec)
        {
            readings.Add(new Reading(Agronomy.SoilTests.Analyte.CationExchangeCapacity, Amount.Measured(cec), ReportingUnit.MilliequivalentsPer100Grams, Agronomy.SoilTests.Method.By(null), "published table"));
        }

        if (Ph is { } ph)
        {
            readings.Add(new Reading(Agronomy.SoilTests.Analyte.Ph, Amount.Measured(ph), ReportingUnit.PhUnits, Agronomy.SoilTests.Method.By(Procedure.PhWater11), "published table"));
        }

        if (Phosphorus is { } phosphorus)
        {
            readings.Add(reading with { Analyte = Agronomy.SoilTests.Analyte.P, Amount = Amount.Measured(phosphorus) });
        }

        var depth = DepthTo is { } inches ? new SampleDepth(Length.Zero, Length.FromInches(inches)) : null;
        return (new SoilTest("published", null, null, depth, null, null, null, readings, []) { Timing = Timing is null ? null : Words.Timings.Read(Timing).Value }, reading);
    }

    public RatingContext Context() => new() { CropGroup = CropGroup, SoilGroup = Texture is null ? null : Words.SoilGroups.Read(Texture).Value, Subregion = Subregion };

    private Method MethodOf(Analyte analyte) => Extractant is null
        ? Agronomy.SoilTests.Method.By(Method is null ? null : Words.ProceduresOf(analyte)!.Read(Method).Value)
        : Agronomy.SoilTests.Method.Extracted(Words.Extractants.Read(Extractant).Value, Detection is null ? null : Words.Detections.Read(Detection).Value);
}
