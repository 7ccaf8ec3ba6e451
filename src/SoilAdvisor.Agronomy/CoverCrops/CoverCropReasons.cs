using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Reasons for and against a cover crop that do not come from its dates: what it does well, its family, what it hosts, how it ends.</summary>
internal sealed class CoverCropReasons(CoverCropQuestion question, CoverCropTables tables, IReadOnlyList<string> aims)
{
    private const double DearFrom = 40;

    private static readonly Citation DiseaseBridge = new("cc08k", null, Evidence.Seen);

    private static readonly Dictionary<string, (string Property, string Words)[]> FunctionsByAim = new(StringComparer.Ordinal)
    {
        ["phosphorus"] = [("function-phosphorus", "making soil phosphorus available")],
        ["nitrogen"] = [("function-nitrogen-source", "bringing nitrogen")],
        ["hold-nitrogen"] = [("function-nitrogen-scavenger", "catching nitrogen that would wash out")],
        ["weeds"] = [("function-weeds", "smothering weeds")],
        ["cover"] = [("function-cover-fast", "covering the soil fast"), ("function-erosion", "holding the soil")],
        ["compaction"] = [("function-compaction", "loosening the soil")],
        ["pollinators"] = [("function-pollinators", "feeding pollinators")],
        ["nematodes"] = [("function-nematodes", "keeping nematodes down")],
    };

    private static readonly string[] Grades = ["no use", "fair", "good", "excellent"];

    /// <summary>Aims that can be asked for.</summary>
    public static IReadOnlyCollection<string> Aims => FunctionsByAim.Keys;

    /// <summary>What keeps it off this bed whatever its points; null for nothing.</summary>
    public CoverCropReason? Barrier(CoverCrop cover)
    {
        // Brassica covers carry clubroot and other diseases to brassica vegetables: no gap is long enough.
        if (cover.Family == CoverCrop.Brassicas && new[] { question.LastCrop, question.NextCrop }.FirstOrDefault(c => c?.Family == cover.Family) is { } vegetable)
        {
            return Reason("family", $"A brassica like {vegetable.Name}: it carries brassica diseases from crop to crop.", 0, DiseaseBridge);
        }

        return HostsOf(cover).FirstOrDefault(h => h.Standing == "host" && question.Problems.Contains(h.Problem)) is { } host
            ? Reason("host", $"You recorded {Plain(host.Problem)} on this bed. {host.Text}", 0, host.Source)
            : null;
    }

    public IEnumerable<CoverCropReason> For(CoverCrop cover, CoverWindow window) =>
    [
        .. aims.SelectMany(aim => Service(cover, aim)),
        .. aims.Contains("phosphorus") ? Doubts(cover) : [],
        .. SameFamily(cover),
        .. HostsOf(cover).Select(OfHost),
        .. Warmth(cover, window),
        .. LostBeforeSpring(cover, window),
        .. OfRegions(cover, window),
        .. cover.AllOf("reseeding").Where(v => v.Text is not null).Select(v => Reason("reseeding", $"Comes back by seed: {v.Text}.", -1, v.Source)),
        .. cover.AllOf("tillage-to-end").Where(v => v.Text is not null).Select(v => Reason("ending", $"Needs tillage to end it: {v.Text}.", -1, v.Source)),
        .. cover.AllOf("stock-toxicity").Where(v => v.Text is not null).Select(v => Reason("toxicity", $"Not for stock without care: {v.Text}.", -1, v.Source)),
        .. SeedCost(cover),
        .. Printed(cover),
    ];

    private IEnumerable<CoverCropReason> Service(CoverCrop cover, string aim)
    {
        foreach (var (property, words) in FunctionsByAim.GetValueOrDefault(aim, []))
        {
            if (cover.ValueOf(property) is { Value: { } grade } value)
            {
                var others = cover.AllOf(property).Skip(1).Where(v => v.Value is not null && v.Value != grade).Select(v => PlainNumber.Of(v.Value!.Value)).ToList();
                var disputed = others.Count > 0 ? $" Another source: {string.Join(", ", others)} of 3." : "";
                yield return Reason(aim, $"Rated {Grades[Math.Clamp((int)grade, 0, 3)]} ({PlainNumber.Of(grade)} of 3) for {words}.{disputed}", (double)grade, value.Source);
            }
        }
    }

    private IEnumerable<CoverCropReason> Doubts(CoverCrop cover)
    {
        var trials = tables.Trials.Where(t => t.CoverCrop == cover.Id && t.Subject == "phosphorus").ToList();
        if (EvidenceStrength.Of(trials) is { } strength)
        {
            var doubted = trials.Any(t => t.Says == "against") || trials.All(t => t.Setting == "pots");
            yield return Reason("evidence", strength, doubted ? -1 : 0, trials.First(t => t.Says is "for" or "against").Source);
        }
    }

    private IEnumerable<CoverCropReason> SameFamily(CoverCrop cover)
    {
        if (question.LastCrop?.Family == cover.Family)
        {
            yield return Reason("family", $"Same plant family ({cover.Family}) as {question.LastCrop.Name} before it: pests and diseases can carry over.", -1, Citation.CommonPractice);
        }

        if (question.NextCrop?.Family == cover.Family)
        {
            yield return Reason("family", $"Same plant family ({cover.Family}) as {question.NextCrop.Name} after it: pests and diseases can carry over.", -1, Citation.CommonPractice);
        }
    }

    private IEnumerable<CoverCropHost> HostsOf(CoverCrop cover) => tables.Hosts.Where(h => h.CoverCrop == cover.Id);

    private CoverCropReason OfHost(CoverCropHost host)
    {
        var recorded = question.Problems.Contains(host.Problem);
        var atRisk = host.Families.Count == 0 || (question.NextCrop is { } next && host.Families.Contains(next.Family));
        var grade = (host.Standing, recorded, atRisk) switch
        {
            ("host", _, true) => -1,
            ("lowers" or "poor-host", true, _) => 1,
            ("depends-on-cultivar", true, _) => -1,
            _ => 0,
        };
        return Reason("host", host.Text, grade, host.Source);
    }

    // The need is printed for a stand between a late-summer sowing and frost; a spring sowing is another matter.
    private IEnumerable<CoverCropReason> Warmth(CoverCrop cover, CoverWindow window)
    {
        if (cover.ValueOf("degree-days-to-use") is { Least: { } needed } value && window.Warmth is { } warmth && window.Fate != WinterFate.NoWinter && warmth.Basis.Base.DegreesFahrenheit == 32)
        {
            var given = $"{PlainNumber.Of(warmth.Sum.FahrenheitDays)} degree-days (°F; {warmth.Basis.Words})";
            var enough = warmth.Sum.FahrenheitDays >= (double)needed;
            yield return Reason("warmth", $"Needs {value.Shown} degree-days above 32 °F between sowing and frost ({value.Note}); the gap gives {given}.", enough ? 0 : -1, value.Source);
        }
    }

    private IEnumerable<CoverCropReason> LostBeforeSpring(CoverCrop cover, CoverWindow window)
    {
        var holdsNitrogen = cover.Family == CoverCrop.Legumes || cover.ValueOf("function-nitrogen-scavenger") is { Value: >= 2 };
        if (window.Fate is WinterFate.DiesInWinter or WinterFate.DiesOfFrost && question.Gap.To.Year > window.Sow.Year && holdsNitrogen)
        {
            yield return Reason("winter", "Killed by cold, it loses much of its nitrogen before spring.", -1, new Citation("cc01b", null, Evidence.Seen));
        }
    }

    private IEnumerable<CoverCropReason> OfRegions(CoverCrop cover, CoverWindow window)
    {
        foreach (var dates in tables.RegionalDates.Where(d => d.CoverCrop == cover.Id))
        {
            if (question.Climate.Region is not { } region || !dates.Regions.Contains(region, StringComparer.OrdinalIgnoreCase))
            {
                yield return Reason("note", $"Printed for {dates.Region}: {dates.Text}. Not used here: shift it by your frost dates.", 0, dates.Source);
            }
            else if (dates.What == "sow")
            {
                var fits = Overlap(window, dates);
                yield return Reason("regional-dates", $"Printed for {dates.Region}: {dates.Text}. {(fits ? "The gap lets you sow then." : "The gap does not let you sow then.")}", fits ? 1 : -1, dates.Source);
            }
            else
            {
                yield return Reason("note", $"Printed for {dates.Region}: {dates.Text}.", 0, dates.Source);
            }
        }
    }

    private static bool Overlap(CoverWindow window, RegionalDates dates)
    {
        var from = new DateOnly(window.Sow.Year, dates.From.Month, dates.From.Day);
        var to = dates.To is { } end ? new DateOnly(window.Sow.Year, end.Month, end.Day) : DateOnly.MaxValue;
        return window.Sow <= to && window.SowBy >= from;
    }

    private IEnumerable<CoverCropReason> SeedCost(CoverCrop cover)
    {
        if (cover.ValueOf("seed-price") is { Least: { } low, Most: { } high } price && CoverCropChoices.SeedRateOf(cover) is { Unit: "lb/acre", Most: { } rate })
        {
            var (least, most) = (low * rate, high * rate);
            yield return Reason("seed-cost", $"Seed was {price.Shown} {price.Unit} ({price.Note}): {PlainNumber.Range((double)least, (double)most)} USD an acre then. Prices change; ask for yours.", (double)most > DearFrom ? -1 : 0, price.Source);
        }
    }

    private IEnumerable<CoverCropReason> Printed(CoverCrop cover)
    {
        var hasDates = tables.RegionalDates.Any(d => d.CoverCrop == cover.Id && d.What == "sow");
        foreach (var value in cover.Values.Where(v => !(hasDates && v.Property == "window")))
        {
            if (value.Text is { } text && value.Property is "caution" or "frost" or "termination" or "window")
            {
                var heading = value.Property switch
                {
                    "caution" => "Watch",
                    "frost" => "Frost",
                    "termination" => "End it",
                    _ => "Sowing time printed",
                };
                yield return Reason("note", $"{heading}: {text}.", 0, value.Source);
            }
        }
    }

    private CoverCropReason Reason(string kind, string text, double grade, Citation source) => new(kind, text, grade, question.Weights.Of(kind), source);

    private static string Plain(string problem) => problem.Replace('-', ' ');
}
