using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Planning.Beds;
using UnitsNet;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>
/// What may be mixed and spread in one pass: dry meals and minerals that go out together. Beds that get them in the same proportion share
/// a batch. Weights are rounded down, so that no bed gets more of anything than it was planned.
/// </summary>
internal static class MixingSheet
{
    private static readonly string[] Dry = ["animal-meal", "plant-meal", "processed-manure", "mineral"];

    // Beds of one need get bit-equal rates; anything coarser could bring a bed over a ceiling.
    private const double SameProportion = 1e-6;

    public static (IReadOnlyList<MixingBatch> Batches, IReadOnlyList<string> NotMixed) Of(IReadOnlyList<CarriedMaterial> carried, FieldMeasures measures)
    {
        var mixes = carried
            .GroupBy(c => (c.Spread.Bed, c.Spread.PlantingIndex))
            .Select(g => g.Where(c => MayBeMixed(c.Offered, g)).ToList())
            .Where(m => m.Count > 1)
            .ToList();
        var batches = new List<List<List<CarriedMaterial>>>();
        foreach (var mix in mixes)
        {
            if (batches.Find(b => Alike(b[0], mix)) is { } batch)
            {
                batch.Add(mix);
            }
            else
            {
                batches.Add([mix]);
            }
        }

        return ([.. batches.Select(b => b.Count == 1 ? OneBed(b[0]) : Shared(b, measures))], Apart(carried, batches));
    }

    private static bool MayBeMixed(OfferedMaterial offered, IEnumerable<CarriedMaterial> beside) =>
        Dry.Contains(offered.Material.Category, StringComparer.Ordinal) && !beside.Any(b => NeverTogether.Hold(b.Offered.Material, offered.Material));

    private static bool Alike(List<CarriedMaterial> a, List<CarriedMaterial> b)
    {
        if (a.Count != b.Count || a.Min(c => c.By) != b.Min(c => c.By))
        {
            return false;
        }

        var (all, other) = (a.Sum(Planned), b.Sum(Planned));
        return a.Zip(b).All(p => p.First.Offered.Material.Id == p.Second.Offered.Material.Id
            && Math.Abs((Planned(p.First) / all) - (Planned(p.Second) / other)) <= SameProportion);
    }

    // One bed alone is mixed of what is measured out for it anyway.
    private static MixingBatch OneBed(List<CarriedMaterial> mix) => new(
        mix.Min(c => c.By),
        [.. mix.Select(c => new MixPart(c.Offered.Material, c.Spread.Amount.Measured))],
        [new MixPortion(mix[0].Spread.Bed, Mass.FromKilograms(mix.Sum(c => c.Spread.Amount.Measured.Kilograms)))]);

    private static MixingBatch Shared(List<List<CarriedMaterial>> beds, FieldMeasures measures)
    {
        var parts = Enumerable.Range(0, beds[0].Count)
            .Select(i => new MixPart(beds[0][i].Offered.Material, Down(Mass.FromKilograms(beds.Sum(b => Planned(b[i]))), measures)))
            .ToList();
        var (batch, planned) = (parts.Sum(p => p.Weight.Kilograms), beds.Sum(b => b.Sum(Planned)));
        return new MixingBatch(
            beds[0].Min(c => c.By),
            parts,
            [.. beds.Select(b => new MixPortion(b[0].Spread.Bed, Down(Mass.FromKilograms(batch * b.Sum(Planned) / planned), measures)))]);
    }

    private static Mass Down(Mass mass, FieldMeasures measures)
    {
        var mark = measures.MarkFor(mass);
        var marks = Math.Floor((mass / mark) + 1e-9);
        return marks > 0 ? mark * marks : mass;
    }

    private static List<string> Apart(IReadOnlyList<CarriedMaterial> carried, List<List<List<CarriedMaterial>>> batches)
    {
        var words = new List<string>();
        var alone = carried.Select(c => c.Offered.Material).Where(m => !Dry.Contains(m.Category, StringComparer.Ordinal)).DistinctBy(m => m.Id).Select(m => m.Name).ToList();
        if (alone.Count > 0)
        {
            words.Add($"Never in a mix: {string.Join(", ", alone)}. Lime, ash, manure, compost, mulch and liquids are spread by themselves.");
        }

        var forbidden = carried.GroupBy(c => c.Spread.Bed)
            .SelectMany(g => g.Select(c => c.Offered.Material).Where(m => Dry.Contains(m.Category, StringComparer.Ordinal)).SelectMany(m => g.Where(o => NeverTogether.Hold(o.Offered.Material, m)).Select(o => (m.Name, Other: o.Offered.Material.Name))))
            .Distinct()
            .ToList();
        words.AddRange(forbidden.Select(f => $"{f.Name} is never mixed with {f.Other}."));
        if (batches.Count > 1 && batches.Any(b => b.Count == 1))
        {
            words.Add("A bed that stands alone below gets its materials in another proportion: mix it by itself.");
        }

        return words;
    }

    private static double Planned(CarriedMaterial carried) => carried.Spread.Amount.Planned.Kilograms;
}
