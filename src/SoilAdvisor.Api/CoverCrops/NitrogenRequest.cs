using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Asks what nitrogen a cut cover crop gives.</summary>
internal sealed record NitrogenRequest
{
    public string? CoverCrop { get; init; }

    /// <summary>Ids of the species of a mixture; its nitrogen must have been measured.</summary>
    public IReadOnlyList<string>? Mixture { get; init; }

    /// <summary>Species of a mixture with their parts of its dry matter and their nitrogen; its nitrogen is blended from them.</summary>
    public IReadOnlyList<WrittenStandPart>? Parts { get; init; }

    /// <summary>lb/acre or kg/ha.</summary>
    public WrittenQuantity? DryMatter { get; init; }

    /// <summary>Cuts of frames: all dry weight over all area.</summary>
    public IReadOnlyList<WrittenSample>? Samples { get; init; }

    /// <summary>Where nothing was cut: how tall the stand was when killed. A rule of thumb of low confidence.</summary>
    public WrittenQuantity? Height { get; init; }

    /// <summary>Ground that a stand of known height covered, %; left out, all of it.</summary>
    public WrittenNumber? CoverPercent { get; init; }

    /// <summary>Measured; left out, the published range of the species or of its kind at its stage.</summary>
    public WrittenNumber? NitrogenPercent { get; init; }

    /// <summary>Stage when killed: before-flowering, flowering or mature, where nitrogen was not measured.</summary>
    public string? Stage { get; init; }
}
