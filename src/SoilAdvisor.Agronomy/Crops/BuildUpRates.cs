using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>
/// The build-up and maintenance rule: below the critical level the season's removal and a year's share of the deficit, in the maintenance
/// range the removal, above it nothing.
/// </summary>
internal static class BuildUpRates
{
    public static void Add(NeedRequest request, RateTable table, PlantNutrient nutrient, Analyte analyte, WorkingSheet? working)
    {
        if (request.RatingOf(analyte) is not { } rating)
        {
            request.Refuse("/crops", new(
                "nutrient-not-rated",
                $"{RateWords.NameOf(nutrient)} depends on soil test {Words.Analytes.IdOf(analyte)}, which {request.Guide.Id} did not rate.",
                $"Have {Words.Analytes.IdOf(analyte)} tested by the extractant of the guide, or choose a guide that covers your test."));
            return;
        }

        if (!Range(request, table, nutrient, working).TryGet(out var range, out var refusal)
            || !Tested(request, rating, analyte).TryGet(out var tested, out refusal))
        {
            request.Refuse("/crops", refusal);
            return;
        }

        if (tested.MilligramsPerKilogram > range.Upper.MilligramsPerKilogram)
        {
            WriteStop(working, table, nutrient, analyte, tested, range.Upper, rating);
            AddNeed(request, table, rating, nutrient, default, HarvestRemoval.IfKnown(request, nutrient, working));
            return;
        }

        if (!HarvestRemoval.OfSeason(request, nutrient, null).TryGet(out _, out refusal))
        {
            request.Refuse("/crops", refusal);
            return;
        }

        var removal = HarvestRemoval.OfSeason(request, nutrient, working).Value;
        var removalLine = working?.LastLine ?? 0;
        if (tested.MilligramsPerKilogram >= range.Critical.MilligramsPerKilogram)
        {
            AddNeed(request, table, rating, nutrient, removal, removal);
            return;
        }

        var buildUp = BuildUp(request, table, nutrient, rating, tested, range, working);
        var need = NeedFormulas.RemovalAndBuildUp.Of((removal, buildUp), working, Origin.Line(removalLine), Origin.Line(working?.LastLine ?? 0));
        AddNeed(request, table, rating, nutrient, need, removal);
    }

    private static void AddNeed(NeedRequest request, RateTable table, Rating rating, PlantNutrient nutrient, MassPerArea need, MassPerArea? removal)
    {
        if (table.PairWith(request.Guide.Id) is { Note: { } note } pair)
        {
            request.Assume("rate-pair", $"{table.Title} is read with the class limits of {request.Guide.Title}. {note}", pair.Source);
        }

        request.Needs.Add(new NutrientNeed(
            nutrient, 0, request.Plantings[0].Crop.Id, new RateRange(need, need), rating.Class.Name, rating.Standing, table.Id, request.Guide.Id, removal, [], null, [], table.Source));
    }

    private static Answer<MaintenanceRange> Range(NeedRequest request, RateTable table, PlantNutrient nutrient, WorkingSheet? working)
    {
        if (nutrient == PlantNutrient.P2O5)
        {
            return Answer<MaintenanceRange>.Given(new(Level(table, "p-critical"), Level(table, "p-maintenance-upper"), Origin.From(Parameter(table, "p-critical").Source)));
        }

        if (Cec(request) is not { } cec)
        {
            return Answer<MaintenanceRange>.Refused(
                "cec-needed",
                $"The critical potassium of {table.Id} rises with the cation exchange capacity, which the soil test does not give.",
                "Ask the laboratory for the cation exchange capacity (cec, meq/100g).");
        }

        var (atZero, perCec) = (Parameter(table, "k-critical-base"), Parameter(table, "k-critical-per-cec"));
        var critical = NeedFormulas.CriticalPotassium.Of(
            (Coefficient(atZero), Coefficient(perCec), cec.Capacity),
            working,
            Origin.From(atZero.Source),
            Origin.From(perCec.Source),
            Origin.Given(cec.Where));
        var upper = critical.MilligramsPerKilogram + (double)Parameter(table, "k-maintenance-width").Value;
        return Answer<MaintenanceRange>.Given(new(critical, SoilConcentration.FromMilligramsPerKilogram(upper), Origin.Line(working?.LastLine ?? 0)));
    }

    private static Answer<SoilConcentration> Tested(NeedRequest request, Rating rating, Analyte analyte)
    {
        if (!ReadingConversion.To(rating.Reading, ReportingUnit.MilligramsPerKilogram, request.Test.PoundsPerAcreFactor).TryGet(out var converted, out var refusal))
        {
            return Answer<SoilConcentration>.Refused(refusal);
        }

        foreach (var assumption in converted.Assumptions)
        {
            request.Assume(assumption);
        }

        if (converted.Amount.Kind != AmountKind.Measured)
        {
            request.Assume(
                "open-result",
                Invariant($"{Words.Analytes.IdOf(analyte)} was reported as {rating.Reading.Amount} {Words.Units.IdOf(rating.Reading.Unit)}; the build-up is reckoned from that limit itself."),
                Citation.OurJudgement);
        }

        return Answer<SoilConcentration>.Given(SoilConcentration.FromMilligramsPerKilogram((double)converted.Amount.Number));
    }

    private static MassPerArea BuildUp(NeedRequest request, RateTable table, PlantNutrient nutrient, Rating rating, SoilConcentration tested, MaintenanceRange range, WorkingSheet? working)
    {
        var given = Origin.Given(rating.Reading.Where);
        if (nutrient == PlantNutrient.P2O5)
        {
            var perYear = Parameter(table, "p-build-up-per-year");
            return NeedFormulas.BuildUpPhosphate.Of(
                (Coefficient(perYear), range.Critical, tested), working, Origin.From(perYear.Source), range.CriticalFrom, given).Amount;
        }

        var (atZero, perCec, constant) = (Parameter(table, "k-build-up-base"), Parameter(table, "k-build-up-per-cec"), Parameter(table, "k-build-up-constant"));
        var cec = Cec(request)!.Value;
        return NeedFormulas.BuildUpPotash.Of(
            (Coefficient(atZero), Coefficient(perCec), Coefficient(constant), cec.Capacity, range.Critical, tested),
            working,
            Origin.From(atZero.Source),
            Origin.From(perCec.Source),
            Origin.From(constant.Source),
            Origin.Given(cec.Where),
            range.CriticalFrom,
            given).Amount;
    }

    private static void WriteStop(WorkingSheet? working, RateTable table, PlantNutrient nutrient, Analyte analyte, SoilConcentration tested, SoilConcentration upper, Rating rating) =>
        working?.LookUp(
            "maintenance-range",
            $"{RateWords.NameOf(nutrient)} above the maintenance range",
            Invariant($"{Words.Analytes.IdOf(analyte)} = {tested.MilligramsPerKilogram:0.######} > {upper.MilligramsPerKilogram:0.######} mg/kg: nothing"),
            [new WorkingInput(Words.Analytes.IdOf(analyte), "soil test", tested.MilligramsPerKilogram, null, "mg/kg", Origin.Given(rating.Reading.Where))],
            $"0 lb/acre {nutrient}",
            table.Source);

    private static (ExchangeCapacity Capacity, string Where)? Cec(NeedRequest request) =>
        request.Test.Of(Analyte.CationExchangeCapacity) is { Unit: ReportingUnit.MilliequivalentsPer100Grams, Amount: { Kind: AmountKind.Measured } amount } reading
            ? (ExchangeCapacity.FromMilliequivalentsPer100Grams((double)amount.Number), reading.Where)
            : null;

    private static RateParameter Parameter(RateTable table, string symbol) => table.Parameters.First(p => p.Symbol == symbol);

    private static Coefficient Coefficient(RateParameter parameter) => new((double)parameter.Value);

    private static SoilConcentration Level(RateTable table, string symbol) => SoilConcentration.FromMilligramsPerKilogram((double)Parameter(table, symbol).Value);

    // Critical level, end of the maintenance range, and where the critical level comes from.
    private readonly record struct MaintenanceRange(SoilConcentration Critical, SoilConcentration Upper, Origin CriticalFrom);
}
