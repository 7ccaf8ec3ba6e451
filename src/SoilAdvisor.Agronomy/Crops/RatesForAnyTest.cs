using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>Rates that no soil test class changes: nitrogen, and the micronutrients that the guard decides about.</summary>
internal static class RatesForAnyTest
{
    private const string AllClasses = "all";

    private static readonly PlantNutrient[] Micronutrients =
        [PlantNutrient.B, PlantNutrient.Zn, PlantNutrient.Mn, PlantNutrient.Cu, PlantNutrient.Fe, PlantNutrient.Mo];

    /// <summary>Adds them and returns the table that advises the first crop's nitrogen; null when none does.</summary>
    public static RateTable? AddTo(NeedRequest request, WorkingSheet? working)
    {
        var tables = InOrder(request);
        var ownTables = tables.Where(t => IsOfGuide(request, t)).ToList();
        RateTable? nitrogenTable = null;
        for (var i = 0; i < request.Plantings.Count; i++)
        {
            var table = Add(request, tables, i, PlantNutrient.N, working);
            nitrogenTable ??= table;
            if (table is null)
            {
                request.Refuse($"/crops/{i}", NoNitrogenRate(request, request.Plantings[i].Crop));
            }

            foreach (var nutrient in Micronutrients)
            {
                // A micronutrient rate is never borrowed from another guide: the margin between too little and too much is narrow.
                // It is no line of the board either, because nothing is spread until the guard says so.
                Add(request, ownTables, i, nutrient, null);
            }
        }

        return nitrogenTable;
    }

    private static RateTable? Add(NeedRequest request, IReadOnlyList<RateTable> tables, int planting, PlantNutrient nutrient, WorkingSheet? working)
    {
        var crop = request.Plantings[planting].Crop;
        foreach (var table in tables)
        {
            var rows = request.RowsOf(table, crop).Where(r => r.Nutrient == nutrient && r.Class == AllClasses && request.Fits(r)).ToList();
            if (rows.Count == 0)
            {
                continue;
            }

            var row = rows[0];
            if (!IsOfGuide(request, table))
            {
                request.Assume(
                    "rate-of-another-guide",
                    $"{crop.Name}: {RateWords.NameOf(nutrient)} is read from {table.Title} ({table.Institution}), because no rate table for {request.Guide.Institution} or its region holds it.",
                    row.Source);
            }

            request.Needs.Add(new NutrientNeed(
                nutrient,
                planting,
                crop.Id,
                row.Rate,
                null,
                null,
                table.Id,
                null,
                null,
                [.. table.Splits.Where(s => s.Crop == crop.Id && s.Nutrient == nutrient).OrderBy(s => s.Order)],
                row.Condition,
                [.. rows.Skip(1).Select(RateWords.WithCondition)],
                row.Source));
            working?.LookUp(
                "rate",
                $"{RateWords.NameOf(nutrient)} for {crop.Name}",
                $"{table.Title}: {crop.Name}, {RateWords.NameOf(nutrient)}, whatever the soil test",
                [new WorkingInput("crop", "crop to be grown", null, crop.Name, "", Origin.Given("the bed's crop list"))],
                RateWords.WithCondition(row),
                row.Source);
            return table;
        }

        return null;
    }

    // The guide's own tables, then those of its region, then those of its country, then any.
    private static List<RateTable> InOrder(NeedRequest request) =>
    [
        .. request.RateTables
            .Where(t => t.Kind == RateTableKind.ClassTable)
            .OrderBy(t => t.PairWith(request.Guide.Id) is not null ? 0 : SharesRegion(request, t) ? 1 : SharesCountry(request, t) ? 2 : 3),
    ];

    private static bool IsOfGuide(NeedRequest request, RateTable table) => table.PairWith(request.Guide.Id) is not null || SharesRegion(request, table);

    private static bool SharesRegion(NeedRequest request, RateTable table) => table.Regions.Intersect(request.Guide.Regions, StringComparer.Ordinal).Any();

    private static bool SharesCountry(NeedRequest request, RateTable table) =>
        table.Regions.Select(CountryOf).Intersect(request.Guide.Regions.Select(CountryOf), StringComparer.Ordinal).Any();

    private static string CountryOf(string region) => region.Split('-')[0];

    private static Refusal NoNitrogenRate(NeedRequest request, Crop crop)
    {
        var otherSoil = request.RateTables.Where(t => request.RowsOf(t, crop).Any(r => r.Nutrient == PlantNutrient.N)).Select(t => t.Id).ToList();
        return otherSoil.Count > 0
            ? new("texture-needed", $"{crop.Name}: the nitrogen rates of {string.Join(", ", otherSoil)} depend on the soil.", "Give the texture of the soil test, one the table prints a rate for.")
            : new("crop-not-in-rate-table", $"{crop.Name}: no rate table here holds a nitrogen rate.", "Take the rate from your state's vegetable guide, or add that guide's table. A rate is not borrowed from another crop.");
    }
}
