using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// What a recommended cover crop does in numbers: dry matter by window, available nitrogen by stage, phosphate and potash moved. Ranges stay ranges.
/// A fixed share of the nitrogen is never taken.
/// </summary>
internal static class CoverCropEstimates
{
    // From this day on the published late sowings apply (Nebraska: late July).
    private static readonly (int Month, int Day) LateFrom = (7, 20);

    // Printed limits of what a stand gives the next crop, lb of available nitrogen an acre (PNW 636, highlights).
    private static readonly MassPerArea Most = MassPerArea.FromPoundsPerAcre(100);
    private static readonly MassPerArea Least = MassPerArea.FromPoundsPerAcre(-50);

    /// <summary>The numbers of a cover crop in a window.</summary>
    public static CoverCropNumbers For(CoverCrop cover, CoverWindow window, CoverCropTables tables)
    {
        var matter = DryMatter(cover, window);
        var trials = tables.Trials.Where(t => t.CoverCrop == cover.Id).ToList();
        return new CoverCropNumbers(
            matter,
            cover.Family == CoverCrop.Legumes ? Range(cover.ValueOf("nitrogen-fixed"), 1) : null,
            matter is null ? [] : [.. Stages(cover, matter, tables)],
            CoverCropPhosphorus.Phosphate(cover, matter),
            CoverCropPhosphorus.Potash(cover, matter),
            EvidenceStrength.Of([.. trials.Where(t => t.Subject == "phosphorus")]),
            trials);
    }

    private static CoverCropRange? DryMatter(CoverCrop cover, CoverWindow window)
    {
        var full = Range(cover.ValueOf("dry-matter"), 1, "a full stand as printed");
        if (!IsLate(window) || cover.ValueOf("dry-matter-late-sown") is not { Least: { } least } late)
        {
            return full;
        }

        var low = MassPerArea.FromPoundsPerAcre((double)least);
        return full is null || full.Low < low
            ? Range(late, 1, $"sown late ({late.Note})")
            : new CoverCropRange(low, full.Low, $"from the least printed for a late sowing ({late.Note}) to the low end of a full stand", Citation.OurJudgement);
    }

    private static bool IsLate(CoverWindow window) =>
        window.Fate is not (WinterFate.Lives or WinterFate.Uncertain)
        && (window.Sow.Month > LateFrom.Month || (window.Sow.Month == LateFrom.Month && window.Sow.Day >= LateFrom.Day));

    private static IEnumerable<StageNitrogen> Stages(CoverCrop cover, CoverCropRange matter, CoverCropTables tables)
    {
        if (cover.ValueOf("nitrogen-percent") is { Least: { } low, Most: { } high } measured)
        {
            return [At("not-stated", matter, Percent(low), Percent(high), $"printed for {cover.Name.ToLowerInvariant()}", measured.Source)];
        }

        var ofSpecies = RatioStages.SelectMany(s => cover.AllOf(s.Property).Take(1).Select(v => (s.Stage, Value: v))).Where(s => s.Value.Figure > 0).ToList();
        if (ofSpecies.Count > 1)
        {
            return ofSpecies.Select(s => At(
                s.Stage, MatterAt(s.Stage, cover, matter), FromRatio(s.Value.Most!.Value), FromRatio(s.Value.Least!.Value), $"from its printed carbon to nitrogen ratio of {s.Value.Shown}, with 40 % carbon", s.Value.Source));
        }

        var type = PlantType(cover);
        return tables.StageNitrogen.Where(s => s.PlantType == type).Select(s => At(
            s.Stage, MatterAt(s.Stage, cover, matter), Percent(s.PercentLow), Percent(s.PercentHigh), $"usual for {TypeWords(type)} {StageWords(s.Stage)}; nothing was measured", s.Source));
    }

    private static readonly (string Property, string Stage)[] RatioStages =
    [
        ("carbon-to-nitrogen-vegetative", "before-flowering"), ("carbon-to-nitrogen-flowering", "flowering"), ("carbon-to-nitrogen-mature", "mature"),
    ];

    // A cereal cut young has not yet made its full stand.
    private static CoverCropRange MatterAt(string stage, CoverCrop cover, CoverCropRange matter) =>
        stage == "before-flowering" ? Range(cover.ValueOf("dry-matter-young"), 1) ?? matter : matter;

    private static StageNitrogen At(string stage, CoverCropRange matter, MassShare low, MassShare high, string basis, Citation source)
    {
        StandNitrogen[] corners =
        [
            CoverCropFormulas.Stand(matter.Low, low), CoverCropFormulas.Stand(matter.High, low),
            CoverCropFormulas.Stand(matter.Low, high), CoverCropFormulas.Stand(matter.High, high),
        ];
        var (least, most) = (corners.MinBy(c => c.Available)!, corners.MaxBy(c => c.Available)!);
        var (heldLeast, heldMost) = (Held(least), Held(most));
        return new StageNitrogen(stage, low, high, heldLeast, heldMost, heldLeast != least || heldMost != most, $"{PlainNumber.Range(matter.Low.PoundsPerAcre, matter.High.PoundsPerAcre)} lb of dry matter an acre ({matter.Basis}), nitrogen {basis}", source);
    }

    private static StandNitrogen Held(StandNitrogen stand) =>
        stand.Available > Most ? stand with { Available = Most } : stand.Available < Least ? stand with { Available = Least } : stand;

    /// <summary>Kind of plant as the table of nitrogen by stage names it.</summary>
    internal static string PlantType(CoverCrop cover) => cover.Family switch
    {
        CoverCrop.Legumes => cover.LivesLonger ? "perennial-legume" : "annual-legume",
        CoverCrop.Grasses => "grass",
        CoverCrop.Brassicas => "brassica",
        _ => "other",
    };

    private static string TypeWords(string type) => type switch
    {
        "annual-legume" => "annual legumes",
        "perennial-legume" => "perennial legumes",
        "grass" => "grasses",
        "brassica" => "brassicas",
        _ => "plants that are no legumes",
    };

    /// <summary>A stage in words.</summary>
    internal static string StageWords(string stage) => stage switch
    {
        "before-flowering" => "before flowering",
        "flowering" => "at flowering",
        "mature" => "when ripe",
        _ => "at the stage printed",
    };

    private static MassShare Percent(decimal percent) => MassShare.FromPercent((double)percent);

    private static MassShare FromRatio(decimal ratio) => CoverCropFormulas.NitrogenFromCarbon.Of(new Coefficient((double)ratio));

    private static CoverCropRange? Range(CoverCropValue? value, double factor, string? basis = null) => value is { Least: { } low, Most: { } high }
        ? new CoverCropRange(MassPerArea.FromPoundsPerAcre((double)low) * factor, MassPerArea.FromPoundsPerAcre((double)high) * factor, basis ?? value.Note ?? "as printed", value.Source)
        : null;
}
