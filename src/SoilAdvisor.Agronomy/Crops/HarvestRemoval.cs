using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What the season's harvests take away: maintenance of a build-up rule, and the ceiling of phosphorus that comes along.</summary>
internal static class HarvestRemoval
{
    private const string Harvested = "harvested";
    private const string BushelsPerAcre = "bu/acre";
    private const string PoundsPerBushel = "lb/bu";

    /// <summary>The season's removal, or nothing where a yield or a removal figure is missing.</summary>
    public static MassPerArea? IfKnown(NeedRequest request, PlantNutrient nutrient, WorkingSheet? working)
    {
        if (nutrient is not (PlantNutrient.P2O5 or PlantNutrient.K2O) || !OfSeason(request, nutrient, null).IsGiven)
        {
            return null;
        }

        return OfSeason(request, nutrient, working).Value;
    }

    /// <summary>The removal of all crops of the bed, or what is missing for it.</summary>
    public static Answer<MassPerArea> OfSeason(NeedRequest request, PlantNutrient nutrient, WorkingSheet? working)
    {
        var assumed = new List<Assumption>();
        var total = OfSeason(request.Plantings, nutrient, assumed, working);
        if (total.IsGiven)
        {
            assumed.ForEach(request.Assume);
        }

        return total;
    }

    /// <summary>The removal of plantings one after the other, or what is missing for it.</summary>
    public static Answer<MassPerArea> OfSeason(IReadOnlyList<Planting> plantings, PlantNutrient nutrient, List<Assumption> assumed, WorkingSheet? working)
    {
        var total = default(MassPerArea);
        for (var i = 0; i < plantings.Count; i++)
        {
            var before = working?.LastLine ?? 0;
            if (!OfCrop(plantings[i], nutrient, assumed, working).TryGet(out var removal, out var refusal))
            {
                return Answer<MassPerArea>.Refused(refusal);
            }

            total = i == 0 ? removal : NeedFormulas.SeasonRemoval.Of((total, removal), working, Origin.Line(before), Origin.Line(working?.LastLine ?? 0));
        }

        return Answer<MassPerArea>.Given(total);
    }

    private static Answer<MassPerArea> OfCrop(Planting planting, PlantNutrient nutrient, List<Assumption> assumed, WorkingSheet? working)
    {
        var crop = planting.Crop;
        var removals = crop.Removals.Where(r => r.Part == Harvested && ContentOf(r, nutrient) is not null).ToList();
        if (removals.Count == 0)
        {
            return Answer<MassPerArea>.Refused(
                "removal-not-held",
                $"{crop.Name}: no figure is held for the {RateWords.NameOf(nutrient)} that its harvest removes.",
                "Use a guide with a rate table for this crop.");
        }

        foreach (var (value, unit, origin, assumption) in Yields(planting))
        {
            if (removals.FirstOrDefault(r => (r.Unit == PoundsPerBushel) == (unit == BushelsPerAcre)) is not { } removal)
            {
                continue;
            }

            if (unit == BushelsPerAcre)
            {
                Note(assumed, assumption);
                return Answer<MassPerArea>.Given(NeedFormulas.RemovalByBushel.Of(
                    (new Coefficient((double)value), new Coefficient((double)ContentOf(removal, nutrient)!.Value)), working, origin, Origin.From(removal.Source)));
            }

            if (YieldByWeight(value, unit) is { } yield)
            {
                Note(assumed, assumption);
                return Answer<MassPerArea>.Given(NeedFormulas.Removal.Of(
                    (yield, Content(removal, nutrient)), working, ToTons(working, crop, value, unit, yield, origin), Origin.From(removal.Source)));
            }
        }

        return Answer<MassPerArea>.Refused(
            "yield-needed",
            planting.ExpectedYield is { } expected
                ? Invariant($"{crop.Name}: a yield in {expected.Unit} cannot be read with the removal figures held ({string.Join(", ", removals.Select(r => r.Unit).Distinct())}).")
                : $"{crop.Name}: the rule gives what the harvest removes, and no yield is known.",
            removals.Any(r => r.Unit != PoundsPerBushel)
                ? "Give the expected yield by weight: short-ton/acre, cwt/acre, lb/acre or t/ha."
                : "Give the expected yield in bu/acre.");
    }

    private static void Note(List<Assumption> assumed, Assumption? assumption)
    {
        if (assumption is not null)
        {
            assumed.Add(assumption);
        }
    }

    private static IEnumerable<(decimal Value, string Unit, Origin From, Assumption? Assumption)> Yields(Planting planting)
    {
        if (planting.ExpectedYield is { } expected)
        {
            return [(expected.Value, expected.Unit, Origin.Given("expected yield"), null)];
        }

        return planting.Crop.Values
            .Where(v => v.Property == "typical-yield" && (v.Value ?? v.Low) is not null)
            .Select(v => ((v.Value ?? v.Low)!.Value, v.Unit, Origin.From(v.Source), (Assumption?)TypicalYield(planting.Crop, v)));
    }

    private static Assumption TypicalYield(Crop crop, CropValue value) => new(
        "typical-yield",
        Invariant($"{crop.Name}: no yield was given, so a typical {value.Value ?? value.Low} {value.Unit}{(value.Value is null ? " (low end of the published range)" : "")} is counted."),
        value.Source);

    private static MassPerArea? YieldByWeight(decimal value, string unit) => unit switch
    {
        "short-ton/acre" or "ton/acre" => MassPerArea.FromPoundsPerAcre((double)value * 2000),
        "cwt/acre" => MassPerArea.FromPoundsPerAcre((double)value * 100),
        "lb/acre" => MassPerArea.FromPoundsPerAcre((double)value),
        "t/ha" => MassPerArea.Of(Mass.FromTonnes((double)value), Area.FromHectares(1)),
        _ => null,
    };

    private static Origin ToTons(WorkingSheet? working, Crop crop, decimal value, string unit, MassPerArea yield, Origin from)
    {
        if (working is null || unit is "short-ton/acre" or "ton/acre")
        {
            return from;
        }

        var factor = unit switch
        {
            "cwt/acre" => "100 / 2000",
            "lb/acre" => "1 / 2000",
            _ => "1000 / 0.45359237 × 0.40468564224 / 2000",
        };
        working.LookUp(
            "unit-conversion",
            $"Harvest of {crop.Name} in short tons",
            Invariant($"Y = {value} {unit} × {factor}"),
            [new WorkingInput("Y", "harvest", (double)value, null, unit, from)],
            Invariant($"{yield.PoundsPerAcre / 2000:0.########} ton/acre"),
            Citation.UnitDefinitions);
        return Origin.Line(working.LastLine);
    }

    private static MassShare Content(Removal removal, PlantNutrient nutrient)
    {
        var printed = (double)ContentOf(removal, nutrient)!.Value;
        return removal.Unit switch
        {
            "lb/ton" => MassShare.FromPoundsPerShortTon(printed),
            "lb/cwt" => MassShare.FromPercent(printed),
            "kg/t" => MassShare.FromFraction(printed / 1000),
            _ => throw new InvalidOperationException($"A removal in {removal.Unit} passed the tables' check."),
        };
    }

    private static decimal? ContentOf(Removal removal, PlantNutrient nutrient) => nutrient switch
    {
        PlantNutrient.P2O5 => removal.P2O5,
        PlantNutrient.K2O => removal.K2O,
        _ => null,
    };
}
