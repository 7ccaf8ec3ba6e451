using System.Globalization;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Beds;

/// <summary>
/// How much phosphate in all forms may come along where none is needed. Where the guide's rate is above zero there is no such limit.
/// </summary>
/// <param name="Most">Total P2O5 over the season; null for no limit.</param>
/// <param name="Reason">Why, in words; null without a limit.</param>
/// <param name="NoManureOrCompost">True at the stop limit.</param>
/// <param name="Assumptions">What was assumed.</param>
internal sealed record PhosphorusLimit(MassPerArea? Most, string? Reason, bool NoManureOrCompost, IReadOnlyList<Assumption> Assumptions)
{
    /// <summary>Phosphate that nitrogen meals may bring as a trace. Ours, printed.</summary>
    public const double TracePoundsPerAcre = 5;

    private static readonly MassPerArea Trace = MassPerArea.FromPoundsPerAcre(TracePoundsPerAcre);

    public static PhosphorusLimit Of(BedNeed need, IReadOnlyList<Rating> ratings)
    {
        var given = need.Needs.Where(n => n.Nutrient == PlantNutrient.P2O5).ToList();
        if (given.Any(n => n.Rate.High > default(MassPerArea)))
        {
            return new PhosphorusLimit(null, null, false, []);
        }

        return (given.FirstOrDefault()?.Standing ?? ratings.FirstOrDefault(r => r.Analyte == Analyte.P)?.Standing) switch
        {
            Standing.Stop => new PhosphorusLimit(Trace, $"soil phosphorus is at the guide's stop limit: no manure or compost, and at most a trace of {TraceWords} with other materials", true, [TraceIsOurs]),
            Standing.Above or Standing.Target => WithinRemoval(given),
            _ when given.Count > 0 => WithinRemoval(given),
            _ => new PhosphorusLimit(null, null, false, [new Assumption("phosphorus-limit-unknown", "Phosphorus is not rated, so no limit could be set on the phosphate that comes with other materials. Least is preferred.", Citation.OurJudgement)]),
        };
    }

    private static string TraceWords => string.Create(CultureInfo.InvariantCulture, $"{TracePoundsPerAcre} lb/acre of total P2O5");

    private static Assumption TraceIsOurs => new("phosphate-trace", $"Nitrogen materials may bring up to {TraceWords} where no phosphate is needed; the figure is ours.", Citation.OurJudgement);

    private static PhosphorusLimit WithinRemoval(List<NutrientNeed> given) => given.FirstOrDefault()?.Removal is { } removal
        ? new PhosphorusLimit(
            MassPerArea.Larger(removal, Trace),
            "the guide asks for no phosphate: no more than the harvests of the season remove",
            false,
            removal < Trace ? [TraceIsOurs] : [])
        : new PhosphorusLimit(Trace, $"the guide asks for no phosphate and no removal is held for these crops: at most a trace of {TraceWords}", false, [TraceIsOurs]);
}
