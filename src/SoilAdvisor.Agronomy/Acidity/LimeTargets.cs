using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>Which printed target a method is read for.</summary>
internal static class LimeTargets
{
    // A table of texture and pH is rough: a target within this of the printed one is read as the printed one, and that is said.
    private const decimal RoughTolerance = 0.2m;

    /// <summary>The printed target at or below the one asked for; null where all lie above it.</summary>
    public static decimal? Printed(LimeQuestion question, LimeMethod method, IReadOnlyList<decimal> targets)
    {
        var asked = question.Target.Value;
        var below = targets.Where(t => t <= asked).Select(t => (decimal?)t).LastOrDefault();
        var read = below ?? (method.IsRough ? targets.Where(t => t - asked <= RoughTolerance).Select(t => (decimal?)t).FirstOrDefault() : null);
        if (read is { } target && target != asked)
        {
            question.Assume(
                "lime-table-target",
                target < asked
                    ? Invariant($"{method.Title} does not print target pH {asked}; the next lower target {target} is read.")
                    : Invariant($"{method.Title} is printed for target pH {target}, {target - asked} above yours: spread half, wait, and test again."),
                method.Source);
        }

        return read;
    }

    public static Answer<LimeRequirement> Outside(LimeQuestion question, LimeMethod method, IReadOnlyList<decimal> targets) => Outside(question, method, string.Join(", ", targets.Select(t => Invariant($"{t}"))));

    public static Answer<LimeRequirement> Outside(LimeQuestion question, LimeMethod method, string limits) => Answer<LimeRequirement>.Refused(
        "target-outside-method",
        Invariant($"{method.Title} is published for a target pH {limits}; the soil pH is {question.Ph} and the target {question.Target.Value}."),
        "Choose a target or a method within its limits, or give the laboratory's lime rate.");
}
