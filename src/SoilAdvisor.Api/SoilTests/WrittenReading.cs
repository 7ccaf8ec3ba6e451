using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>One line of a laboratory report, as received.</summary>
internal sealed record WrittenReading
{
    public string? Analyte { get; init; }

    public WrittenNumber? Value { get; init; }

    /// <summary>&lt;, &lt;=, &gt; or &gt;=; left out for a plain number.</summary>
    public string? Comparator { get; init; }

    public string? Unit { get; init; }

    public string? Extractant { get; init; }

    public string? Detection { get; init; }

    public string? Basis { get; init; }

    public string? Method { get; init; }
}
