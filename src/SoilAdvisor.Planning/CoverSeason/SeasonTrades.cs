using System.Globalization;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Seasons;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>Says where a bed did not get what scores highest on it alone, and why.</summary>
/// <param name="model">The season.</param>
/// <param name="chosen">What each gap grows; null for bare.</param>
internal sealed class SeasonTrades(SeasonModel model, IReadOnlyList<SeasonOption?> chosen)
{
    /// <summary>The trade of one gap; null when it has the best that fits it.</summary>
    public Cited<string>? Of(int gap)
    {
        var choices = model.Gaps[gap].Selection.Choices;
        if (choices.Count == 0)
        {
            return new("Nothing in the tables fits this gap; the reasons stand with each species.", Citation.OurArithmetic);
        }

        var best = model.Option(gap, choices[0]);
        if (chosen[gap] is not { } has)
        {
            return new($"Stays bare. {Why(best, null)}", Citation.OurArithmetic);
        }

        return has.Hundredths >= best.Hundredths ? null : new($"{Less(has, best)} {Why(best, has)}", Citation.OurArithmetic);
    }

    private static string Less(SeasonOption has, SeasonOption best) =>
        $"{has.Choice.CoverCrop.Name} scores {Points(best.Hundredths - has.Hundredths)} less here than {best.Choice.CoverCrop.Name}.";

    private string Why(SeasonOption best, SeasonOption? has)
    {
        var name = best.Choice.CoverCrop.Name;
        if (best.Hundredths <= 0)
        {
            return $"What fits scores {Points(best.Hundredths)} or less: the reasons against outweigh those for it.";
        }

        if (model.TooSoon(best) is { } crop)
        {
            return $"{name} is of the family of {crop.Name} ({crop.Family}) on the same bed, less than {Months} apart.";
        }

        if (chosen.OfType<SeasonOption>().FirstOrDefault(o => model.Excludes(best, o)) is { } other)
        {
            return $"{name} is of the family of {other.Choice.CoverCrop.Name} ({other.Choice.CoverCrop.Family}), which this bed grows less than {Months} apart.";
        }

        return Stock(best, has) ?? Species(best, has) ?? $"With {name} here the other beds would have to change, and the farm as a whole would score less.";
    }

    private string? Stock(SeasonOption best, SeasonOption? has)
    {
        var stock = model.Stocks[best.Species];
        var used = chosen.OfType<SeasonOption>().Where(o => o.Species == best.Species && o.Gap != has?.Gap).Sum(o => o.Grams);
        return !stock.CanBuy && used + best.Grams > stock.OnHand.Grams + 1e-6
            ? string.Create(CultureInfo.InvariantCulture, $"There is not enough seed of {best.Choice.CoverCrop.Name}: {stock.OnHand.Grams:#,0} g on hand, {used:#,0} g go to other beds, this bed takes {best.Grams:#,0} g, and none is to be bought.")
            : null;
    }

    private string? Species(SeasonOption best, SeasonOption? has)
    {
        var others = chosen.OfType<SeasonOption>().Where(o => o.Gap != best.Gap).Select(o => o.Species).Distinct().ToList();
        if (others.Contains(best.Species))
        {
            return null;
        }

        var name = best.Choice.CoverCrop.Name;
        if (model.Wish.MostSpecies is { } most && others.Count >= most)
        {
            return $"{name} would be a further species, and you asked for at most {most.ToString(CultureInfo.InvariantCulture)}.";
        }

        var keeps = has is null || others.Contains(has.Species);
        return keeps && others.Count > 0 && model.HundredthsPerSpecies >= best.Hundredths - (has?.Hundredths ?? 0)
            ? $"{name} would be a further species, and each costs {Points(model.HundredthsPerSpecies)}."
            : null;
    }

    private string Months => $"{model.Wish.FamilyGapMonths!.Value.ToString(CultureInfo.InvariantCulture)} {(model.Wish.FamilyGapMonths == 1 ? "month" : "months")}";

    private static string Points(long hundredths) => string.Create(CultureInfo.InvariantCulture, $"{hundredths / 100m:0.##} {(Math.Abs(hundredths) == 100 ? "point" : "points")}");
}
