using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>The limits on metals of one jurisdiction and one kind of material.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Its name.</param>
/// <param name="Region">Where it holds, in words.</param>
/// <param name="Covers">compost-and-manure or fertiliser.</param>
/// <param name="Limits">Its limits.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Note">Remark; null for none.</param>
public sealed record MetalRule(string Id, string Title, string Region, string Covers, IReadOnlyList<MetalLimit> Limits, Citation Source, string? Note)
{
    /// <summary>Whether it is made for a material.</summary>
    /// <param name="material">The material.</param>
    public bool IsFor(Material material) => Covers == "compost-and-manure" == (material.Category is "compost" or "manure" or "processed-manure" or "mulch");
}
