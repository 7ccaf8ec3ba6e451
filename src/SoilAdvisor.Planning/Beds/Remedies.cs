using System.Globalization;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Beds;

/// <summary>
/// What would meet a floor that is missed. Nothing is claimed that was not tried: each material of the tables and each limit is put into
/// the programme, and is named only when the gap closes.
/// </summary>
internal sealed class Remedies(MaterialPlan plan, BedModel bedModel, IReadOnlyList<OfferedMaterial> offered, IReadOnlyList<OfferedMaterial> notOffered)
{
    private const int MostNamed = 3;

    public IReadOnlyList<Shortfall> All()
    {
        var shortfalls = new List<Shortfall>();
        for (var r = 0; r < plan.Model.Requirements.Count; r++)
        {
            if (!plan.Solution.Missed[r].IsZero)
            {
                var requirement = plan.Model.Requirements[r];
                shortfalls.Add(new Shortfall(requirement.Nutrient, requirement.Nutrient == Nutrient.AvailableN ? requirement.PlantingIndex : null, plan.Solution.Missed[r], false, WhatWouldMeet(r)));
            }
        }

        return shortfalls;
    }

    private string WhatWouldMeet(int row)
    {
        var requirement = plan.Model.Requirements[row];
        List<string> words = [.. Materials(row, requirement), .. Limits(row), .. LargestRates(row, requirement)];
        return words.Count > 0
            ? string.Join(" ", words)
            : $"No single material of the tables and no single limit would close this gap. Spread what is given here, and ask an adviser about {requirement.Nutrient.Words()}.";
    }

    private IEnumerable<string> Materials(int row, Requirement requirement)
    {
        var found = new List<(OfferedMaterial Material, MassPerArea Rate)>();
        foreach (var material in notOffered.Where(m => m.Analysis.Share(requirement.Nutrient) > 0).OrderByDescending(m => m.Analysis.Share(requirement.Nutrient)).ThenBy(m => m.Material.Id, StringComparer.Ordinal))
        {
            var tried = MaterialPlan.Best(bedModel.For([.. offered, material], plan.Model.Priced));
            if (tried.Solution.Missed[row].IsZero)
            {
                found.Add((material, Rate(tried, material)));
            }

            if (found.Count == MostNamed)
            {
                break;
            }
        }

        if (found.Count > 0)
        {
            yield return $"Any one of these, which you did not list, would meet it: {string.Join("; ", found.Select(f => string.Create(CultureInfo.InvariantCulture, $"{f.Material.Material.Name} at {f.Rate.PoundsPerAcre:0} lb/acre")))}.";
        }
    }

    private IEnumerable<string> Limits(int row)
    {
        for (var c = 0; c < plan.Model.Requirements.Count; c++)
        {
            var limit = plan.Model.Requirements[c];
            if (limit.Ceiling is not { } ceiling)
            {
                continue;
            }

            var tried = Try(plan.Model with { Requirements = [.. plan.Model.Requirements.Select((r, i) => i == c ? r with { Ceiling = null } : r)] });
            if (tried.Solution.Missed[row].IsZero)
            {
                var supply = tried.Model.SupplyOf(limit.Nutrient, limit.PlantingIndex, tried.Solution);
                yield return string.Create(CultureInfo.InvariantCulture, $"What stands in the way is the limit of {ceiling.PoundsPerAcre:0.#} lb/acre on {limit.Nutrient.Words()} ({limit.CeilingReason}); the materials offered would need {supply.PoundsPerAcre:0.#} lb/acre.");
            }
        }
    }

    private IEnumerable<string> LargestRates(int row, Requirement requirement)
    {
        // Four times the largest single rate stands for as many spreadings as a season holds.
        var tried = Try(plan.Model with { Variables = [.. plan.Model.Variables.Select(v => v with { Most = v.Most * 4 })], SharedLimits = [] });
        if (tried.Solution.Missed[row].IsZero)
        {
            yield return $"The largest single rates of the materials offered stand in the way: spread the rest of the {requirement.Nutrient.Words()} in a second dressing, when the first has been taken up.";
        }
    }

    private static MaterialPlan Try(MaterialModel model) => MaterialPlan.Best(model);

    private static MassPerArea Rate(MaterialPlan tried, OfferedMaterial material)
    {
        var rate = default(MassPerArea);
        for (var i = 0; i < tried.Model.Variables.Count; i++)
        {
            rate += tried.Model.Variables[i].Offered.Material.Id == material.Material.Id ? tried.Solution.Amounts[i] : default;
        }

        return rate;
    }
}
