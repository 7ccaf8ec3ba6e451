using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>
/// Holds a laboratory's metals of a material against one rule that the farm names. Above a ceiling the material is refused; a limit on the
/// load becomes a largest rate. No rule is ever taken for granted: they differ many times over.
/// </summary>
public static class MetalCheck
{
    /// <summary>What the test allows.</summary>
    /// <param name="material">The material.</param>
    /// <param name="tested">Its test; null, or one without metals, says nothing.</param>
    /// <param name="rule">The rule named; null: nothing is applied, and that is said.</param>
    public static MetalVerdict Of(Material material, GrowerAnalysis? tested, MetalRule? rule)
    {
        if (tested is null || tested.Metals.Count == 0)
        {
            return MetalVerdict.None;
        }

        if (rule is null)
        {
            return Said(material, "Its metals were held against no limit, because none was named. Limits differ many times over from place to place: name the one that holds for you.", Citation.OurJudgement);
        }

        return rule.IsFor(material)
            ? new Sheet(material, tested, rule).Fill()
            : Said(material, $"Its metals were held against no limit: {rule.Title} is made for {(rule.Covers == "fertiliser" ? "labelled fertilisers" : "composts and manures")}.", rule.Source);
    }

    private static MetalVerdict Said(Material material, string text, Citation source) =>
        new([new MaterialTestFinding(material, "metals", "tested", text, false, source)], [], []);

    private sealed class Sheet(Material material, GrowerAnalysis tested, MetalRule rule)
    {
        private readonly WorkingSheet working = new();
        private readonly List<MaterialTestFinding> findings = [];
        private readonly List<RateCap> caps = [];

        public MetalVerdict Fill()
        {
            working.Section($"Metals of {material.Name}");
            foreach (var metal in Enum.GetValues<Metal>())
            {
                if (tested.Metals.TryGetValue(metal, out var content))
                {
                    One(metal, content, [.. rule.Limits.Where(l => l.Metal == metal)]);
                }
            }

            return new MetalVerdict(findings, caps, working.Lines);
        }

        private void One(Metal metal, MetalContent content, IReadOnlyList<MetalLimit> limits)
        {
            if (limits.Count == 0)
            {
                Find(metal, content, $"{rule.Title} prints no limit for it.", false, rule.Source);
                return;
            }

            foreach (var ceiling in limits.Where(l => l.Kind is MetalLimitKind.Ceiling or MetalLimitKind.ForEachPercentPhosphate))
            {
                if (Allowed(ceiling) is var allowed && content.CompareTo(allowed) > 0)
                {
                    Find(metal, content, Invariant($"Above the ceiling of {PlainNumber.Of(allowed.MilligramsPerKilogramDry)} mg/kg of {rule.Title}: it is not planned. Do not spread it on ground for food; ask your certifier and your state."), true, ceiling.Source);
                    return;
                }
            }

            if (limits.FirstOrDefault(l => l.Kind == MetalLimitKind.NoLoadCounted) is { } free && content.MilligramsPerKilogramDry <= (double)free.Value)
            {
                Find(metal, content, Invariant($"At or below {free.Value} mg/kg: {rule.Title} counts no load."), false, free.Source);
                return;
            }

            var loads = limits.Where(l => l.Kind is MetalLimitKind.Annual or MetalLimitKind.Cumulative).ToList();
            if (loads.Count == 0 || content.MilligramsPerKilogramDry <= 0)
            {
                Find(metal, content, $"Within the limit of {rule.Title}.", false, limits[0].Source);
                return;
            }

            var tightest = loads.Select(l => (Limit: l, Most: InAYear(l))).OrderBy(l => l.Most).First();
            var (moisture, where) = Moisture();
            var largest = MetalFormulas.LargestDressing.Of((tightest.Most, content, moisture), working, Origin.From(tightest.Limit.Source), Origin.Given("metals of the test"), where);
            caps.Add(new RateCap(largest, $"the limit on {metal} of {rule.Title}", tightest.Limit.Source));
            Find(metal, content, Invariant($"At most {PlainNumber.Of(largest.PoundsPerAcre)} lb/acre ({PlainNumber.Of(largest.KilogramsPerHectare / 1000)} t/ha) of it as spread in a year, by the limit of {tightest.Limit.Value} {tightest.Limit.Unit} ({Words(tightest.Limit)}) of {rule.Title}."), false, tightest.Limit.Source);
        }

        private MetalContent Allowed(MetalLimit limit)
        {
            if (limit.Kind == MetalLimitKind.Ceiling)
            {
                return MetalContent.FromMilligramsPerKilogramDry((double)limit.Value);
            }

            var guaranteed = tested.P2O5 ?? material.ValueOf("total-p2o5") switch { { } row => row.Value ?? row.Low ?? 0, _ => 0 };
            return MetalFormulas.AllowedByLabel.Of(
                (new Coefficient((double)limit.Value), MassShare.FromPercent((double)Math.Max(guaranteed, limit.LeastPercent ?? 0))),
                working,
                Origin.From(limit.Source),
                tested.P2O5 is null ? Origin.From(material.Source) : Origin.Given("P2O5 of the analysis"));
        }

        private static MassPerArea InAYear(MetalLimit limit) => limit.Years is { } years ? limit.Load * (1.0 / years) : limit.Load;

        private static string Words(MetalLimit limit) => limit switch
        {
            { Kind: MetalLimitKind.Annual } => "in a year",
            { Years: { } years } => Invariant($"over {years} years, a {years}th part each year"),
            _ => "ever on one ground: what earlier years brought has to come off",
        };

        // The drier it is taken, the more metal is in a pound of it: without a figure it counts as dry.
        private (MassShare Moisture, Origin From) Moisture() => tested.Moisture is { } said
            ? (MassShare.FromPercent((double)said), Origin.Given("moisture of the analysis"))
            : material.ValueOf("moisture") is { } row
                ? (MassShare.FromPercent((double)(row.Low ?? row.Value ?? 0)), Origin.From(row.Source))
                : (default, Origin.Given("no moisture is known: taken as dry"));

        private void Find(Metal metal, MetalContent content, string text, bool forbids, Citation source) =>
            findings.Add(new MaterialTestFinding(material, metal.ToString(), Invariant($"{PlainNumber.Of(content.MilligramsPerKilogramDry)} mg/kg of dry matter"), text, forbids, source));
    }
}
