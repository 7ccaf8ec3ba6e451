namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>How strong the evidence of trials is, in words. Where they disagree, that comes first.</summary>
internal static class EvidenceStrength
{
    public static string? Of(IReadOnlyList<CoverCropTrial> trials)
    {
        var (pro, contra) = (trials.Where(t => t.Says == "for").ToList(), trials.Where(t => t.Says == "against").ToList());
        return (pro.Count, contra.Count) switch
        {
            (0, 0) => null,
            ( > 0, > 0) => $"Trials disagree on whether the next crop gains phosphorus: {Count(pro.Count)} for, {Count(contra.Count)} against.",
            (0, _) => $"The evidence is against a gain in phosphorus: {Count(contra.Count)}.",
            _ when pro.All(t => t.Setting == "pots") => "The evidence is weak: a gain in phosphorus was seen in pots only.",
            _ => $"The evidence is fair: {Count(pro.Count)} for a gain in soil phosphorus, none held against.",
        };
    }

    private static string Count(int findings) => findings == 1 ? "one finding" : $"{findings} findings";
}
