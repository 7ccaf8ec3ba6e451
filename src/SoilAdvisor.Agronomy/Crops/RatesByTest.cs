using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Rates that the soil test decides, each read through a pair of guide and rate table and given once per soil test.</summary>
internal static class RatesByTest
{
    private static readonly (PlantNutrient Nutrient, Analyte Analyte)[] Nutrients =
    [
        (PlantNutrient.P2O5, Analyte.P),
        (PlantNutrient.K2O, Analyte.K),
        (PlantNutrient.Mg, Analyte.Mg),
        (PlantNutrient.S, Analyte.S),
        (PlantNutrient.Ca, Analyte.Ca),
    ];

    public static void AddTo(NeedRequest request, WorkingSheet? working)
    {
        foreach (var (nutrient, analyte) in Nutrients)
        {
            // Every guide speaks of phosphate and potash; the others are advised only where a table prints them.
            var isAlwaysAdvised = nutrient is PlantNutrient.P2O5 or PlantNutrient.K2O;
            if (request.Paired.Count == 0)
            {
                if (isAlwaysAdvised)
                {
                    request.Refuse("/crops", NoPair(request, nutrient));
                }

                continue;
            }

            var table = TableFor(request, nutrient);
            if (table.Kind == RateTableKind.BuildUpAndMaintenance)
            {
                if (isAlwaysAdvised)
                {
                    BuildUpRates.Add(request, table, nutrient, analyte, working);
                }
            }
            else
            {
                ClassRates.Add(request, table, nutrient, analyte, isAlwaysAdvised, working);
            }
        }
    }

    // Of several tables paired with the guide, the one that holds most of the bed's crops; the first in order where they tie.
    private static RateTable TableFor(NeedRequest request, PlantNutrient nutrient) =>
        request.Paired.MaxBy(t => request.Plantings.Count(p => request.Holds(t, p.Crop, nutrient)))!;

    private static Refusal NoPair(NeedRequest request, PlantNutrient nutrient)
    {
        var pairs = request.RateTables
            .Where(t => t.Pairs.Count > 0 && request.Plantings.Any(p => request.Holds(t, p.Crop, nutrient)))
            .Select(t => $"{t.Id} with the guide {string.Join(" or ", t.Pairs.Select(p => p.Guide))}")
            .ToList();
        return new(
            "no-rate-pair",
            $"No rate table may be read with the class limits of {request.Guide.Id}, so {RateWords.NameOf(nutrient)} cannot be advised.",
            pairs.Count > 0
                ? $"Choose a guide that covers your extractant and has a table for these crops: {string.Join("; ", pairs)}."
                : "No table here holds these crops. Use your state's vegetable guide.");
    }
}
