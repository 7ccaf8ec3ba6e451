using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops.Mixtures;

/// <summary>Whether the partners of a mixture fit in season, life, maturity, kill, depth and share: what does not, with the figures.</summary>
internal static class MixtureFit
{
    private const double LargestUsualSum = 120;

    public static IReadOnlyList<Cited<string>> Warnings(IReadOnlyList<SownSpecies> sown, MassShare? total, CoverCropRules rules)
    {
        if (sown.Count < 2)
        {
            return [];
        }

        return
        [
            .. Shares(sown, total, rules),
            .. Seasons(sown),
            .. Apart(sown, "days-to-use", "days", "is of use after", "One is past its best before the other is ready."),
            .. Apart(sown, "days-to-flower", "days", "flowers after", "They cannot be mown at the flowering of both."),
            .. Kill(sown),
            .. Depth(sown, rules),
            new Cited<string>("No heights are held: whether the taller partner shades out the shorter cannot be said from the tables.", Citation.OurJudgement),
        ];
    }

    private static IEnumerable<Cited<string>> Shares(IReadOnlyList<SownSpecies> sown, MassShare? total, CoverCropRules rules)
    {
        if (total is { } sum && sum.Percent > LargestUsualSum + 1e-9)
        {
            yield return new($"The shares add up to {PlainNumber.Of(sum.Percent)} % of the full rates. Usual is 100 %, in a garden of two species 120 %.", rules.Of(CoverCropRules.TwoSpeciesShare)?.Source ?? Citation.CommonPractice);
        }

        var legumes = sown.Where(s => s.CoverCrop.Family == CoverCrop.Legumes).ToList();
        foreach (var rye in sown.Where(s => s.CoverCrop.Id == "cereal-rye" && legumes.Count > 0))
        {
            if (Above(rye, rules.Of(CoverCropRules.RyeOverLegume)) is { } rule)
            {
                yield return new($"{rye.CoverCrop.Name} stands at {Percent(rye)} of its full rate. {rule.Text}", rule.Source);
            }
        }

        foreach (var grass in sown.Where(s => s.CoverCrop.Family == CoverCrop.Grasses && legumes.Any(l => l.CoverCrop.Id == "crimson-clover")))
        {
            if (Above(grass, rules.Of(CoverCropRules.GrassWithClover)) is { } rule)
            {
                yield return new($"{grass.CoverCrop.Name} stands at {Percent(grass)} of its full rate. {rule.Text}", rule.Source);
            }
        }

        foreach (var brassica in sown.Where(s => s.CoverCrop.Family == CoverCrop.Brassicas && s.Share is { } share && total is { } all && share.Fraction * sown.Count >= all.Fraction - 1e-9))
        {
            if (rules.Of(CoverCropRules.BrassicaShare) is { Text: { } text } rule)
            {
                yield return new($"{brassica.CoverCrop.Name} stands at {Percent(brassica)} of its full rate. {text}", rule.Source);
            }
        }
    }

    private static IEnumerable<Cited<string>> Seasons(IReadOnlyList<SownSpecies> sown)
    {
        var (warm, cool) = (sown.Where(s => s.CoverCrop.Season == "warm").ToList(), sown.Where(s => s.CoverCrop.Season == "cool").ToList());
        if (warm.Count > 0 && cool.Count > 0)
        {
            yield return new($"{Names(warm)} {(warm.Count == 1 ? "wants" : "want")} warm weather, {Names(cool)} cool: one of them does poorly.", warm[0].CoverCrop.Source);
        }

        var (lasting, passing) = (sown.Where(s => s.CoverCrop.LivesLonger).ToList(), sown.Where(s => !s.CoverCrop.LivesLonger).ToList());
        if (lasting.Count > 0 && passing.Count > 0)
        {
            yield return new($"{Names(lasting)} {(lasting.Count == 1 ? "lives" : "live")} longer than one season, {Names(passing)} {(passing.Count == 1 ? "does" : "do")} not: the short-lived partner is only a nurse.", lasting[0].CoverCrop.Source);
        }
    }

    private static IEnumerable<Cited<string>> Apart(IReadOnlyList<SownSpecies> sown, string property, string unit, string words, string so)
    {
        var known = sown.Select(s => (s.CoverCrop, Value: s.CoverCrop.ValueOf(property))).Where(k => k.Value is not null && k.Value.Least is not null).ToList();
        foreach (var (early, late) in Pairs(known).Where(p => p.First.Value!.Most < p.Second.Value!.Least))
        {
            yield return new($"{early.CoverCrop.Name} {words} {early.Value!.Shown} {unit}, {late.CoverCrop.Name} after {late.Value!.Shown}. {so}", late.Value!.Source);
        }
    }

    private static IEnumerable<Cited<string>> Kill(IReadOnlyList<SownSpecies> sown)
    {
        var (tender, hardy) = (sown.Where(s => s.CoverCrop.IsFrostTender).ToList(), sown.Where(s => s.CoverCrop.Overwinters).ToList());
        if (tender.Count > 0 && hardy.Count > 0)
        {
            yield return new($"Frost ends {Names(tender)}; {Names(hardy)} {(hardy.Count == 1 ? "lives" : "live")} on and must be ended another way.", Citation.CommonPractice);
        }

        var ways = sown.Select(s => (s.CoverCrop, Value: s.CoverCrop.ValueOf("termination"))).Where(w => w.Value?.Text is not null).ToList();
        if (ways.Select(w => w.Value!.Text).Distinct(StringComparer.Ordinal).Count() > 1)
        {
            yield return new($"They are ended differently: {string.Join(". ", ways.Select(w => $"{w.CoverCrop.Name}: {w.Value!.Text}"))}.", ways[0].Value!.Source);
        }
    }

    private static IEnumerable<Cited<string>> Depth(IReadOnlyList<SownSpecies> sown, CoverCropRules rules)
    {
        var known = sown.Where(s => s.Depth is not null && s.Depth.Least is not null).Select(s => (s.CoverCrop, Value: s.Depth!)).ToList();
        foreach (var (shallow, deep) in Pairs(known).Where(p => p.First.Value.Most < p.Second.Value.Least))
        {
            yield return new(
                $"{shallow.CoverCrop.Name} goes {shallow.Value.Shown} in deep, {deep.CoverCrop.Name} {deep.Value.Shown} in. {rules.Of(CoverCropRules.TwoPasses)?.Text}".TrimEnd(),
                rules.Of(CoverCropRules.TwoPasses)?.Source ?? deep.Value.Source);
        }
    }

    private static CoverCropRule? Above(SownSpecies species, CoverCropRule? rule) =>
        rule is { Value: { } limit, Text: not null } && species.Share is { } share && share.Percent > (double)limit + 1e-9 ? rule : null;

    private static IEnumerable<(T First, T Second)> Pairs<T>(IReadOnlyList<T> all) => from a in all from b in all select (a, b);

    private static string Percent(SownSpecies species) => $"{PlainNumber.Of(species.Share!.Value.Percent)} %";

    private static string Names(List<SownSpecies> sown) => string.Join(" and ", sown.Select(s => s.CoverCrop.Name));
}
