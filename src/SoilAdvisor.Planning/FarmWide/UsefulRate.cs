using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// The highest rate of a material that can still be of use: with it alone every floor that it serves is met and no ceiling is broken.
/// The nearer this stands to the rates of real plans, the sooner a search is proven.
/// </summary>
internal static class UsefulRate
{
    private static readonly Nutrient[] Nutrients = Enum.GetValues<Nutrient>();

    /// <summary>In pounds per acre; the largest single rate where the material takes a nutrient up, because others may then make up for it.</summary>
    /// <param name="model">The bed.</param>
    /// <param name="variable">The material and planting.</param>
    public static double Of(MaterialModel model, MaterialVariable variable)
    {
        var most = variable.Most.PoundsPerAcre;
        if (Nutrients.Any(n => variable.Share(n) < 0))
        {
            return most;
        }

        var meetsAll = 0.0;
        foreach (var requirement in model.Requirements.Where(r => r.Counts(variable.PlantingIndex)))
        {
            var share = variable.Share(requirement.Nutrient);
            if (share <= 0)
            {
                continue;
            }

            if (requirement.Ceiling is { } ceiling && model.Variables.All(v => v.Share(requirement.Nutrient) >= 0))
            {
                most = Math.Min(most, ceiling.PoundsPerAcre / share);
            }

            if (requirement.AsksForSomething)
            {
                meetsAll = Math.Max(meetsAll, requirement.Floor!.Value.PoundsPerAcre / share);
            }
        }

        return Math.Min(most, meetsAll);
    }
}
