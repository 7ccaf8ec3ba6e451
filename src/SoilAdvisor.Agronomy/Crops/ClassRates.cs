using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>A printed rate for each class: the guide's class, through the pair, to the table's class, to the row. The row governs, zero or not.</summary>
internal static class ClassRates
{
    private const string AllClasses = "all";

    public static void Add(NeedRequest request, RateTable table, PlantNutrient nutrient, Analyte analyte, bool isAlwaysAdvised, WorkingSheet? working)
    {
        var pair = table.PairWith(request.Guide.Id)!;
        var rating = request.RatingOf(analyte);
        var found = new List<(int Planting, IReadOnlyList<RateRow> Rows)>();
        for (var i = 0; i < request.Plantings.Count; i++)
        {
            var crop = request.Plantings[i].Crop;
            if (RowsFor(request, table, pair, rating, crop, nutrient, analyte).TryGet(out var rows, out var refusal))
            {
                if (rows.Count > 0)
                {
                    found.Add((i, rows));
                }
            }
            else if (isAlwaysAdvised || refusal.Code != "crop-not-in-rate-table")
            {
                request.Refuse($"/crops/{i}", refusal);
            }
        }

        if (found.Count == 0)
        {
            return;
        }

        var chosen = found.MaxBy(f => (f.Rows[0].Rate.High, f.Rows[0].Rate.Low));
        AddNeed(request, table, pair, chosen.Planting, chosen.Rows, rating, nutrient, analyte, working);
        if (found.Count > 1)
        {
            request.Assume(
                "largest-single-crop-rate",
                Invariant($"{RateWords.NameOf(nutrient)} for {found.Count} crops on one soil test: the largest single crop's rate ({request.Plantings[chosen.Planting].Crop.Name}) is given once, before the first crop, and not the sum. The table prints complete rates for one crop."),
                Citation.OurJudgement);
        }
    }

    private static void AddNeed(NeedRequest request, RateTable table, RatePair pair, int planting, IReadOnlyList<RateRow> rows, Rating? rating, PlantNutrient nutrient, Analyte analyte, WorkingSheet? working)
    {
        var row = rows[0];
        var crop = request.Plantings[planting].Crop;
        var byClass = row.Class != AllClasses;
        if (pair.Note is not null)
        {
            request.Assume("rate-pair", $"{table.Title} is read with the class limits of {request.Guide.Title}. {pair.Note}", pair.Source);
        }

        working?.LookUp(
            "rate",
            $"{RateWords.NameOf(nutrient)} for {crop.Name}",
            byClass ? $"{table.Title}: {crop.Name}, {rating!.Class.Name} in the guide is {row.Class} in the table" : $"{table.Title}: {crop.Name}, whatever the class",
            byClass
                ? [new WorkingInput(Words.Analytes.IdOf(analyte), "class of the soil test", null, rating!.Class.Name, "", Origin.From(rating.Source))]
                : [new WorkingInput("crop", "crop to be grown", null, crop.Name, "", Origin.Given("the bed's crop list"))],
            RateWords.WithCondition(row),
            row.Source);
        request.Needs.Add(new NutrientNeed(
            nutrient,
            0,
            crop.Id,
            row.Rate,
            byClass ? rating!.Class.Name : null,
            byClass ? rating!.Standing : null,
            table.Id,
            byClass ? request.Guide.Id : null,
            HarvestRemoval.IfKnown(request, nutrient, working),
            [.. table.Splits.Where(s => s.Crop == crop.Id && s.Nutrient == nutrient).OrderBy(s => s.Order)],
            row.Condition,
            [.. rows.Skip(1).Select(RateWords.WithCondition)],
            row.Source));
    }

    // An empty list: the table prints a rate, and its condition is not met.
    private static Answer<IReadOnlyList<RateRow>> RowsFor(NeedRequest request, RateTable table, RatePair pair, Rating? rating, Crop crop, PlantNutrient nutrient, Analyte analyte)
    {
        var ofCrop = request.RowsOf(table, crop).Where(r => r.Nutrient == nutrient).ToList();
        if (ofCrop.Count == 0)
        {
            return Answer<IReadOnlyList<RateRow>>.Refused(NotInTable(request, table, crop, nutrient));
        }

        var forAll = ofCrop.Where(r => r.Class == AllClasses && request.Fits(r)).ToList();
        if (forAll.Count > 0)
        {
            return Answer<IReadOnlyList<RateRow>>.Given(ConditionMet(request, forAll, rating, crop, nutrient) ? forAll : []);
        }

        if (rating is null)
        {
            return Answer<IReadOnlyList<RateRow>>.Refused(
                "nutrient-not-rated",
                $"{crop.Name}: the {RateWords.NameOf(nutrient)} rate depends on soil test {Words.Analytes.IdOf(analyte)}, which {request.Guide.Id} did not rate.",
                $"Have {Words.Analytes.IdOf(analyte)} tested by the extractant of the guide, or choose a guide that covers your test.");
        }

        if (!pair.Classes.TryGetValue(rating.Class.Name, out var tableClass))
        {
            return Answer<IReadOnlyList<RateRow>>.Refused(
                "class-not-in-rate-pair",
                $"{crop.Name}: the class {rating.Class.Name} of {request.Guide.Id} has no counterpart in {table.Id}.",
                "Ask your adviser how the two are read together; no rate is guessed.");
        }

        var rows = ofCrop.Where(r => r.Class == tableClass && request.Fits(r)).ToList();
        return rows.Count > 0
            ? Answer<IReadOnlyList<RateRow>>.Given(rows)
            : Answer<IReadOnlyList<RateRow>>.Refused(
                "class-not-in-rate-table",
                $"{crop.Name}: {table.Id} prints no {RateWords.NameOf(nutrient)} rate for the class {tableClass}{(request.Test.SoilGroup is null ? " without a texture" : "")}.",
                "Give the texture if the table's rates depend on it; else ask your adviser. The rate of another class is not used.");
    }

    // "Only where soil magnesium is low" must not become a rate for every soil.
    private static bool ConditionMet(NeedRequest request, List<RateRow> rows, Rating? rating, Crop crop, PlantNutrient nutrient)
    {
        var row = rows[0];
        if (row.Condition is null || rating?.Standing == Standing.Below)
        {
            return true;
        }

        request.Assume(
            "conditional-rate-not-counted",
            $"{crop.Name}: {RateWords.Printed(row)} is printed only for: {row.Condition}. It is not counted, because the soil test {(rating is null ? "does not show whether that is so" : $"is rated {rating.Class.Name}")}.",
            row.Source);
        return false;
    }

    private static Refusal NotInTable(NeedRequest request, RateTable table, Crop crop, PlantNutrient nutrient)
    {
        var others = request.RateTables
            .Where(t => t.Pairs.Count > 0 && request.Holds(t, crop, nutrient))
            .Select(t => $"{t.Id} (read with {string.Join(" or ", t.Pairs.Select(p => p.Guide))})")
            .ToList();
        return new(
            "crop-not-in-rate-table",
            $"{crop.Name}: {table.Id} holds no {RateWords.NameOf(nutrient)} rate for it.",
            others.Count > 0
                ? $"Held by: {string.Join("; ", others)}. Choose that guide if it covers your extractant, or use your state's vegetable guide."
                : "Use your state's vegetable guide. A rate is not borrowed from another crop.");
    }
}
