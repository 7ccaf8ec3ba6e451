using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>Makes a material ready for a plan: its analysis, price, stock, largest single rate and wait before sowing.</summary>
public static class OfferedMaterials
{
    /// <summary>The material as the farm can have it.</summary>
    /// <param name="material">The material.</param>
    /// <param name="analysis">What it supplies.</param>
    /// <param name="price">Price; null when none was given. Never negative.</param>
    /// <param name="pricePer">Mass that the price is for; needed with a price, above zero.</param>
    /// <param name="onHand">Stock; null when not said.</param>
    /// <param name="listed">True when the user listed it.</param>
    /// <returns>
    /// The offered material, or a refusal: price-negative, price-without-amount, material-without-largest-rate, material-without-wait.
    /// Prohibited materials have neither rate nor wait and are refused here.
    /// </returns>
    public static Answer<OfferedMaterial> For(Material material, MaterialAnalysis analysis, Money? price, Mass? pricePer, Mass? onHand, bool listed)
    {
        if (price is { Value: < 0 })
        {
            return Refuse("price-negative", $"The price of {material.Name} is below zero.", "Give the price as a number of zero or more, or leave it out.");
        }

        if (price is not null && !(pricePer is { } amount && amount.Kilograms > 0 && double.IsFinite(amount.Kilograms)))
        {
            return Refuse("price-without-amount", $"The price of {material.Name} does not say for how much.", "Give the mass it is for, for example 50 lb.");
        }

        if (material.ValueOf("largest-single-rate") is not { } largest || (largest.Value ?? largest.Low ?? largest.High) is not { } most)
        {
            return Refuse(
                "material-without-largest-rate",
                $"No largest single rate of {material.Name} is held, so it is never planned.",
                material.Status == OrganicStatus.Prohibited ? "It is prohibited on organic ground: leave it out." : "Add its largest-single-rate with a source to the material values.");
        }

        if (material.ValueOf("wait-before-sowing") is not { } wait || (wait.Value ?? wait.High ?? wait.Low) is not { } days)
        {
            return Refuse("material-without-wait", $"No wait before sowing is held for {material.Name}, so it is never planned.", "Add its wait-before-sowing with a source to the material values.");
        }

        var perKilogram = price is { } paid ? new Money(paid.Value / (decimal)pricePer!.Value.Kilograms, paid.Currency) : (Money?)null;
        return Answer<OfferedMaterial>.Given(
            new OfferedMaterial(material, analysis, perKilogram, onHand, listed, MassPerArea.FromPoundsPerAcre((double)most), (int)Math.Ceiling(days)));
    }

    private static Answer<OfferedMaterial> Refuse(string code, string message, string suggestion) => Answer<OfferedMaterial>.Refused(code, message, suggestion);
}
