using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Sampling;

/// <summary>Asks how to sample, and what two samples prove. Each part is answered on its own.</summary>
internal sealed record SamplingRequest
{
    /// <summary>Of what. For cores it finds the published field variation; for two tests it leaves the other analytes out.</summary>
    public string? Analyte { get; init; }

    public string? Extractant { get; init; }

    /// <summary>Coefficient of variation from core to core in your block, %; left out, the published one of the analyte.</summary>
    public WrittenNumber? Cv { get; init; }

    /// <summary>Wanted precision, plus or minus %: asks for the number of cores.</summary>
    public WrittenNumber? Precision { get; init; }

    /// <summary>Confidence, %; left out, 95.</summary>
    public WrittenNumber? Confidence { get; init; }

    /// <summary>Cores that you take: asks for the precision they reach.</summary>
    public WrittenNumber? Cores { get; init; }

    /// <summary>Two soil tests of one block, the earlier first: asks whether they differ in truth and whether they pool.</summary>
    public IReadOnlyList<WrittenSoilTest>? Tests { get; init; }

    /// <summary>Beds: asks which may share a composite.</summary>
    public IReadOnlyList<WrittenSampledBed>? Beds { get; init; }
}
