using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>
/// Stones that meet a lime requirement, best first. Magnesium decides between dolomitic and calcitic by the guide's class, never by a
/// calcium to magnesium ratio; then the price of the neutralising value; then the smaller rate.
/// </summary>
public static class LimeChoices
{
    // Dolomitic products carry 6 to 12 % Mg (ncda-410); a stone below that is not sold as dolomitic.
    private const double LeastMagnesiumOfDolomitic = 0.06;

    /// <summary>Stones that meet the requirement, best first; empty when nothing is needed or no liming material is offered.</summary>
    /// <param name="requirement">The requirement.</param>
    /// <param name="offered">Materials at hand. Prohibited ones (burnt and hydrated lime) are never taken; ash only when the user listed it.</param>
    /// <param name="magnesium">Rating of magnesium; null when it was not rated.</param>
    /// <param name="area">Ground that is spread; null without a bed.</param>
    /// <param name="working">Receives the line of each stone's rate; its last line so far must be the requirement. Null for none.</param>
    public static IReadOnlyList<LimeChoice> For(LimeRequirement requirement, IReadOnlyList<OfferedMaterial> offered, Rating? magnesium, Area? area, WorkingSheet? working = null)
    {
        if (requirement.Rate.Amount <= default(MassPerArea))
        {
            return [];
        }

        var requirementLine = working?.LastLine ?? 0;
        return
        [
            .. offered
                .Where(o => o.Material.Category == "lime" && o.Material.Status != OrganicStatus.Prohibited && NeutralisingValue(o) > 0 && (o.Listed || !IsAsh(o)))
                .Select(o => (Offered: o, Choice: Choose(requirement, o, magnesium, area, requirementLine, working)))
                .OrderBy(c => IsAsh(c.Offered))
                .ThenBy(c => !FitsMagnesium(c.Offered, magnesium))
                .ThenBy(c => c.Offered.PricePerKilogram is null)
                .ThenBy(c => c.Offered.PricePerKilogram is { } price ? price.Value / (decimal)NeutralisingValue(c.Offered) : 0)
                .ThenBy(c => c.Choice.Rate)
                .ThenBy(c => c.Offered.Material.Id, StringComparer.Ordinal)
                .Select(c => c.Choice),
        ];
    }

    private static LimeChoice Choose(LimeRequirement requirement, OfferedMaterial offered, Rating? magnesium, Area? area, int requirementLine, WorkingSheet? working)
    {
        var share = NeutralisingValue(offered);
        var rate = LimeFormulas.AsStone.Of(
            (requirement.Rate, MassShare.FromFraction(share)),
            working,
            Origin.Line(requirementLine),
            Origin.From(offered.Analysis.Sources[Nutrient.CalciumCarbonate][0]));
        var doses = Doses(rate, offered.LargestSingleRate);
        var perBed = area is { } ground ? rate.On(ground) : (Mass?)null;
        return new LimeChoice(
            offered,
            rate,
            perBed,
            doses,
            perBed is { } mass ? VolumeMeasures.For(offered.Material, mass) : null,
            perBed is { } weighed && offered.PricePerKilogram is { } price ? new Money(price.Value * (decimal)weighed.Kilograms, price.Currency) : null,
            [.. Reasons(offered, share, doses, magnesium)],
            offered.Analysis.Supplies(rate));
    }

    private static MassPerArea[] Doses(MassPerArea rate, MassPerArea largest)
    {
        // A rate that equals the limit but for the last bit of a double is one dose, not two.
        var count = Math.Max(1, (int)Math.Ceiling((rate.PoundsPerAcre / largest.PoundsPerAcre) - 1e-9));
        return [.. Enumerable.Repeat(rate * (1.0 / count), count)];
    }

    private static IEnumerable<string> Reasons(OfferedMaterial offered, double share, MassPerArea[] doses, Rating? magnesium)
    {
        yield return $"Neutralising value {PlainNumber.Of(share * 100)} % CaCO3. Use the figure on the label where it differs.";
        if (IsAsh(offered))
        {
            yield return "Ash varies widely and brings potash: have it tested. Its potash usually sets a lower rate.";
        }

        if (magnesium is null || magnesium.Standing == Standing.Information)
        {
            yield return "Magnesium is not rated, so it does not decide between dolomitic and calcitic stone.";
        }
        else if (IsDolomitic(offered))
        {
            yield return magnesium.Standing == Standing.Below
                ? $"Magnesium is below target ({magnesium.Class.Name} by {magnesium.Guide}): dolomitic stone adds it."
                : $"Magnesium is at or above target ({magnesium.Class.Name} by {magnesium.Guide}): calcitic stone is the better choice; dolomitic adds more magnesium.";
        }
        else
        {
            yield return magnesium.Standing == Standing.Below
                ? $"Magnesium is below target ({magnesium.Class.Name} by {magnesium.Guide}) and this stone adds little: give magnesium another way."
                : $"Magnesium is at or above target ({magnesium.Class.Name} by {magnesium.Guide}): this stone adds little of it.";
        }

        if (doses.Length > 1)
        {
            yield return $"Split into {doses.Length} doses of {PlainNumber.Of(doses[0].PoundsPerAcre)} lb/acre ({PlainNumber.Of(doses[0].PoundsPer1000SquareFeet)} lb per 1000 sq ft), six months apart.";
        }
    }

    private static bool FitsMagnesium(OfferedMaterial offered, Rating? magnesium) => magnesium?.Standing switch
    {
        Standing.Below => IsDolomitic(offered),
        Standing.Target or Standing.Above or Standing.Stop => !IsDolomitic(offered),
        _ => true,
    };

    private static double NeutralisingValue(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.CalciumCarbonate);

    private static bool IsDolomitic(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.Mg) >= LeastMagnesiumOfDolomitic;

    // Among the liming materials only ash carries potash.
    private static bool IsAsh(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.K2O) > 0;
}
