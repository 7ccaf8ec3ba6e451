using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>
/// One check, not three at once. The rule is ours: a nitrate test where nitrogen is spread for a crop that has a published table for it;
/// else an untreated strip where the release of nitrogen is least sure; else the soil test again.
/// </summary>
internal static class CheckChoice
{
    // From here on the published release is so wide that only the bed itself can tell (ours).
    private const double WideRelease = 1.5;

    public static ProposedCheck? Of(IReadOnlyList<BedPlan> beds, DateOnly date, Tables tables) =>
        NitrateTest(beds, date, tables) ?? UntreatedStrip(beds) ?? Resampling(beds, date, tables);

    private static ProposedCheck? NitrateTest(IReadOnlyList<BedPlan> beds, DateOnly date, Tables tables)
    {
        var candidates =
            from bed in beds
            from k in Enumerable.Range(0, bed.Bed.Plantings.Count)
            let planting = bed.Bed.Plantings[k]
            where planting.Planted is null || planting.Planted >= date
            where bed.Applications.Any(a => a.PlantingIndex == k && a.Offered.Analysis.Share(Nutrient.AvailableN) > 0)
            let table = tables.SidedressTables.FirstOrDefault(t => t.Crop == planting.Crop.Id)
            where table is not null
            orderby bed.Bed.Area.SquareMeters descending
            select (bed, planting, table);
        if (candidates.FirstOrDefault() is not (var (first, crop, rates) and { table: not null }))
        {
            return null;
        }

        return new ProposedCheck(
            ProposedCheckKind.NitrateTest,
            first.Bed.Id,
            $"Test the soil's nitrate before you sidedress {crop.Crop.Name} on bed {first.Bed.Id}, and let the result set the sidedressing. {rates!.Note ?? ""}".TrimEnd(),
            "Nitrogen is spread for a crop that has a published table from a nitrate test to the sidedressing.",
            crop.Planted,
            null,
            rates.Source);
    }

    private static ProposedCheck? UntreatedStrip(IReadOnlyList<BedPlan> beds)
    {
        var widest = beds
            .Select(b => (Bed: b, Nitrogen: b.Balances.FirstOrDefault(n => n.Nutrient == Nutrient.AvailableN)))
            .Where(b => b.Nitrogen is { } n && n.Supplied > default(MassPerArea) && n.SuppliedHigh >= n.Supplied * WideRelease && b.Bed.Applications.Any(a => a.Offered.Analysis.Share(Nutrient.AvailableN) > 0))
            .OrderByDescending(b => b.Nitrogen!.SuppliedHigh.PoundsPerAcre / b.Nitrogen.Supplied.PoundsPerAcre)
            .ThenByDescending(b => b.Bed.Bed.Area.SquareMeters)
            .FirstOrDefault();
        return widest.Nitrogen is not { } balance
            ? null
            : new ProposedCheck(
                ProposedCheckKind.UntreatedStrip,
                widest.Bed.Bed.Id,
                $"Leave a strip across bed {widest.Bed.Bed.Id} without any of it, marked at both ends and about as long as the bed is wide. Treat it like the rest in everything else. Weigh or count what both sides give.",
                string.Create(CultureInfo.InvariantCulture, $"What its materials release is published from {balance.Supplied.PoundsPerAcre:0} to {balance.SuppliedHigh.PoundsPerAcre:0} lb/acre of N: only the bed itself can tell which end is true for you."),
                widest.Bed.Bed.Plantings.Select(p => p.Planted).FirstOrDefault(),
                widest.Bed.Bed.Plantings.Select(p => p.HarvestEnd ?? p.FirstHarvest).FirstOrDefault(),
                Citation.CommonPractice);
    }

    private static ProposedCheck? Resampling(IReadOnlyList<BedPlan> beds, DateOnly date, Tables tables)
    {
        var candidates =
            from bed in beds
            where bed.Bed.SoilTest.Sampled is not null
            let interval = tables.ResamplingIntervals.FirstOrDefault(i => i.Site == bed.Bed.Site)
            where interval is not null
            let due = bed.Lime?.Timing?.Retest ?? bed.Bed.SoilTest.Sampled!.Value.AddYears(interval.Years)
            orderby due, bed.Bed.Area.SquareMeters descending
            select (bed, interval, due);
        if (candidates.FirstOrDefault() is not (var (first, every, day) and { bed: not null }))
        {
            return null;
        }

        var test = first!.Bed.SoilTest;
        var to = day < date ? date : day;
        return new ProposedCheck(
            ProposedCheckKind.Resampling,
            first.Bed.Id,
            string.Create(CultureInfo.InvariantCulture, $"Sample bed {first.Bed.Id} again in the season of {test.Sampled!.Value:MMMM}, {(test.Depth is { } ? "to the same depth" : "to one depth, and write it down")}, and send it to {(test.Lab is { Length: > 0 } lab ? lab : "the same laboratory")}. Only then can two tests be compared."),
            first.Lime?.Timing is { Retest: not null } ? "Lime is spread: the test after it shows what it did." : string.Create(CultureInfo.InvariantCulture, $"Nothing here hangs on a guess that a test could settle this season; the soil test of {test.Sampled!.Value:yyyy-MM-dd} is good for {every!.Years} {(every.Years == 1 ? "year" : "years")}."),
            to,
            null,
            every!.Source);
    }
}
