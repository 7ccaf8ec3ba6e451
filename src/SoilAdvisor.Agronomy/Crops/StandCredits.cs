using System.Globalization;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>
/// Nitrogen left by what stood before: measured where it was measured, else what the rate table prints. One stand earns one credit.
/// </summary>
internal static class StandCredits
{
    private const string PoundsPerAcre = "lb/acre";
    private const string LegumeFamily = "Fabaceae";

    public static void AddTo(NeedRequest request, RateTable? table, IReadOnlyList<PreviousStand> previous, IReadOnlyDictionary<string, CoverCrop> coverCrops, WorkingSheet? working)
    {
        foreach (var stand in previous.DistinctBy(s => string.Join('+', s.Partners.Prepend(s.What))))
        {
            if (stand is { IsCoverCrop: true, DryMatter: { } dryMatter, NitrogenPercent: { } nitrogen })
            {
                AddMeasured(request, stand, NameOf(stand, coverCrops), dryMatter, nitrogen, working);
            }
            else if (table is not null)
            {
                AddPrinted(request, table, stand, coverCrops, working);
            }
        }
    }

    private static void AddMeasured(NeedRequest request, PreviousStand stand, string name, MassPerArea dryMatter, decimal nitrogen, WorkingSheet? working)
    {
        var printed = CoverCropFormulas.PlantAvailableNitrogen.Inputs[0];
        if ((double)nitrogen < printed.Min || (double)nitrogen > printed.Max)
        {
            request.Refuse("/previous", new(
                "nitrogen-percent-out-of-range",
                Invariant($"{name}: {nitrogen} % nitrogen in dry matter; plants hold {printed.Min} to {printed.Max} %."),
                "Give the laboratory's nitrogen percent of dry matter, not of fresh weight."));
            return;
        }

        var perTon = CoverCropFormulas.PlantAvailableNitrogen.Of(MassShare.FromPercent((double)nitrogen), working, Origin.Given($"nitrogen measured in {name}"));
        var perTonLine = working?.LastLine ?? 0;
        var credit = CoverCropFormulas.NitrogenCredit.Of((dryMatter, perTon), working, Origin.Given(stand.Estimate is null ? $"dry matter measured in {name}" : $"dry matter of {name}, estimated from its height"), Origin.Line(perTonLine)).Amount;
        if (perTon.Fraction <= 0)
        {
            request.Assume(
                "cover-crop-ties-up-nitrogen",
                Invariant($"{name} at {nitrogen} % N gives nothing or ties nitrogen up; the publication says little or none below 1.5 % N, so the amount is uncertain."),
                CoverCropFormulas.PlantAvailableNitrogen.Source);
        }

        var how = stand.Estimate is null ? "measured" : "dry matter estimated from its height";
        if (stand.Estimate is { } estimate)
        {
            request.Assume(estimate.Code, $"{name}: {estimate.Text} The plan counts {(credit > default(MassPerArea) ? "none of this nitrogen" : "all that it may tie up")}.", estimate.Source);
        }

        request.Credits.Add(new NutrientCredit(
            PlantNutrient.N,
            stand.Killed is { } killed ? Invariant($"{name}, killed {killed:yyyy-MM-dd}, {how}") : $"{name}, {how}",
            stand.Estimate is not null && credit > default(MassPerArea) ? default : credit,
            stand.Estimate is not null && credit < default(MassPerArea) ? default : credit,
            "most of it 4 to 6 weeks after it is killed",
            CoverCropFormulas.PlantAvailableNitrogen.Source));
    }

    private static void AddPrinted(NeedRequest request, RateTable table, PreviousStand stand, IReadOnlyDictionary<string, CoverCrop> coverCrops, WorkingSheet? working)
    {
        var name = NameOf(stand, coverCrops);
        var rows = RowsFor(table, stand, coverCrops).Where(r => State(request, r) != ConditionState.NotMet).ToList();
        if (rows.Count == 0)
        {
            request.Assume("no-printed-credit", $"{table.Title} prints no nitrogen credit for {name} on this soil, so none is taken.", table.Source);
            return;
        }

        // One printed case that nobody confirmed may not hold at all; of several cases one is taken to hold, and it may be the least.
        var onlyCaseIsOpen = rows.Count == 1 && State(request, rows[0]) == ConditionState.Open;
        var low = onlyCaseIsOpen ? Math.Min(0, rows[0].PrintedLow) : rows.Min(r => r.PrintedLow);
        var high = rows.Max(r => r.PrintedHigh ?? r.PrintedLow);
        var conditions = rows.Where(r => State(request, r) == ConditionState.Open).Select(r => $"{Amount(r)}: {r.Condition}").ToList();
        if (conditions.Count > 0)
        {
            request.Assume(
                "credit-condition-open",
                Invariant($"{name}: the credit depends on what was not said ({string.Join("; ", conditions)}), so {low} to {high} lb/acre N is shown and {low} is counted."),
                rows[0].Source);
        }

        working?.LookUp(
            "credit",
            $"Nitrogen credit after {name}",
            $"{table.Title}: {string.Join("; ", rows.Select(r => r.Condition is null ? Amount(r) : $"{Amount(r)} ({r.Condition})"))}",
            [new WorkingInput("stand", "what stood before", null, name, "", Origin.Given("the bed's previous crops"))],
            Invariant($"{low} to {high} lb/acre N; the low end counts"),
            rows[0].Source);
        request.Credits.Add(new NutrientCredit(
            PlantNutrient.N, name, MassPerArea.FromPoundsPerAcre((double)low), MassPerArea.FromPoundsPerAcre((double)high), rows[0].Timing, rows[0].Source));
    }

    // A row for the very crop goes before a row for its group.
    private static List<CreditRow> RowsFor(RateTable table, PreviousStand stand, IReadOnlyDictionary<string, CoverCrop> coverCrops)
    {
        var rows = table.Credits.Where(c => c.Unit == PoundsPerAcre && c.Kind is "previous-crop" or "cover-crop").ToList();
        if (stand.Partners.Count > 0)
        {
            return [];
        }

        var own = rows.Where(c => c.What == stand.What).ToList();
        var isLegume = stand.IsCoverCrop && coverCrops.TryGetValue(stand.What, out var coverCrop) && coverCrop.Family == LegumeFamily;
        return own.Count > 0 || !isLegume ? own : [.. rows.Where(c => c.Kind == "cover-crop" && c.What == "legume")];
    }

    // Texture is the one printed condition that a soil test can answer.
    private static ConditionState State(NeedRequest request, CreditRow row)
    {
        if (row.Condition is null)
        {
            return ConditionState.Met;
        }

        if (!row.Condition.StartsWith("not on sand", StringComparison.Ordinal))
        {
            return ConditionState.Open;
        }

        return request.Test.SoilGroup switch
        {
            null => ConditionState.Open,
            SoilGroup.Sand or SoilGroup.LoamySand or SoilGroup.SandyLoam => ConditionState.NotMet,
            _ => ConditionState.Met,
        };
    }

    private static string Amount(CreditRow row) =>
        row.PrintedHigh is { } high ? Invariant($"{row.PrintedLow} to {high} {row.Unit} N") : row.PrintedLow.ToString(CultureInfo.InvariantCulture) + $" {row.Unit} N";

    private static string NameOf(PreviousStand stand, IReadOnlyDictionary<string, CoverCrop> coverCrops) =>
        string.Join(" and ", stand.Partners.Prepend(stand.What).Select(id => stand.IsCoverCrop && coverCrops.TryGetValue(id, out var coverCrop) ? coverCrop.Name : id));

    private enum ConditionState
    {
        Open,
        Met,
        NotMet,
    }
}
