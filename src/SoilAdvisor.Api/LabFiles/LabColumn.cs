using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>What a column of a lab file holds.</summary>
internal abstract record LabColumn
{
    private LabColumn()
    {
    }

    /// <summary>Something said of the sample itself, for example its id.</summary>
    public sealed record About(string Name, string? Unit) : LabColumn;

    /// <summary>A measured analyte; the reading is complete but for its value.</summary>
    public sealed record Measured(WrittenReading Reading) : LabColumn;

    /// <summary>A rate that the laboratory recommends; complete but for its value.</summary>
    public sealed record Recommended(WrittenLabRecommendation Recommendation) : LabColumn;

    /// <summary>A column that was refused; its cells are not read.</summary>
    public sealed record Refused : LabColumn;
}
