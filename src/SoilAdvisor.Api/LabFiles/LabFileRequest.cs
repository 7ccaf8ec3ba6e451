using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>Soil tests to be read and checked.</summary>
internal sealed record LabFileRequest
{
    public IReadOnlyList<WrittenSoilTest>? SoilTests { get; init; }
}
