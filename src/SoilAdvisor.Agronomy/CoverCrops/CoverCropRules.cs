namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>The rules of sowing, mixing and measuring that the tables hold, by id. What is not held is not applied.</summary>
/// <param name="rules">The rules.</param>
public sealed class CoverCropRules(IReadOnlyDictionary<string, CoverCropRule> rules)
{
    /// <summary>Factor on the drilled rate for seed that is thrown and worked in.</summary>
    public const string BroadcastWorkedIn = "broadcast-worked-in";

    /// <summary>Factor on the drilled rate for seed left on the surface.</summary>
    public const string OnTheSurface = "on-the-surface";

    /// <summary>Least germination, %, below which the rate is to be raised.</summary>
    public const string LeastGermination = "least-germination";

    /// <summary>Share of its full rate, %, that each of two species gets in a garden.</summary>
    public const string TwoSpeciesShare = "two-species-share";

    /// <summary>What to do where seeds differ in size.</summary>
    public const string TwoPasses = "two-passes";

    /// <summary>A grass sown with crimson clover.</summary>
    public const string GrassWithClover = "grass-with-clover";

    /// <summary>A brassica in a mixture.</summary>
    public const string BrassicaShare = "brassica-share";

    /// <summary>Share of its full rate, %, above which cereal rye smothers a legume.</summary>
    public const string RyeOverLegume = "rye-over-legume";

    /// <summary>How well height tells the weight of a stand.</summary>
    public const string HeightAndWeight = "height-and-weight";

    /// <summary>Ids of all rules.</summary>
    public static IReadOnlyList<string> Known { get; } =
        [BroadcastWorkedIn, OnTheSurface, LeastGermination, TwoSpeciesShare, TwoPasses, GrassWithClover, BrassicaShare, RyeOverLegume, HeightAndWeight];

    /// <summary>A rule; null when the tables do not hold it.</summary>
    /// <param name="rule">Id from <see cref="Known"/>.</param>
    public CoverCropRule? Of(string rule) => rules.GetValueOrDefault(rule);
}
