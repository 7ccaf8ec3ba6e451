using System.Globalization;
using System.Text;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;
using UnitsNet;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>Puts beds with the same model together. Equal means equal to the last bit: nothing is rounded into one group.</summary>
internal static class NeedGroups
{
    /// <summary>The groups in the order of their first bed.</summary>
    /// <param name="beds">Model and ground of each bed, in the order of the request.</param>
    public static IReadOnlyList<NeedGroup> Of(IReadOnlyList<(MaterialModel Model, Area Area)> beds) =>
    [
        .. Enumerable.Range(0, beds.Count)
            .GroupBy(i => KeyOf(beds[i].Model), StringComparer.Ordinal)
            .Select(g => new NeedGroup(MaterialPlan.Best(beds[g.First()].Model), [.. g], g.Sum(i => beds[i].Area.Acres))),
    ];

    private static string KeyOf(MaterialModel model)
    {
        var key = new StringBuilder(512);
        foreach (var variable in model.Variables)
        {
            Add(key, variable.Offered.Material.Id, variable.PlantingIndex, variable.Most.PoundsPerAcre);

            // Rock phosphate counts by the pH of the bed: one material, several analyses.
            Add(key, [.. variable.Offered.Analysis.Planned.OrderBy(share => share.Key).Select(share => (object?)share.Value)]);
        }

        foreach (var requirement in model.Requirements)
        {
            Add(key, requirement.Nutrient, requirement.PlantingIndex, requirement.Floor?.PoundsPerAcre, requirement.Ceiling?.PoundsPerAcre);
        }

        foreach (var excess in model.Excesses)
        {
            Add(key, excess.Nutrient, excess.Above.PoundsPerAcre);
        }

        foreach (var limit in model.SharedLimits)
        {
            Add(key, limit.Material, string.Join('+', limit.Plantings), limit.Most.PoundsPerAcre);
        }

        return key.ToString();
    }

    private static void Add(StringBuilder key, params object?[] parts) =>
        key.AppendJoin('|', parts.Select(p => p is double d ? d.ToString("R", CultureInfo.InvariantCulture) : p)).Append('\n');
}
