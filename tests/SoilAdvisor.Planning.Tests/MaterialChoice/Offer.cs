using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

/// <summary>Invented materials: the laws and the optimum do not depend on what a material is called.</summary>
internal static class Offer
{
    public static OfferedMaterial Of(string id, double? pricePerPound, double most, params (Nutrient Nutrient, double Share)[] shares) => Of(id, "plant-meal", pricePerPound, most, shares);

    public static OfferedMaterial Of(string id, string category, double? pricePerPound, double most, params (Nutrient Nutrient, double Share)[] shares)
    {
        var planned = shares.ToDictionary(s => s.Nutrient, s => s.Share);
        var analysis = new MaterialAnalysis(planned, planned, new Dictionary<Nutrient, IReadOnlyList<Citation>>(), []);
        var material = new Material(id, id, category, "as-sold", ManureKind.None, OrganicStatus.Allowed, "", true, [], [], [], Citation.OurJudgement, null);
        Money? price = pricePerPound is { } p ? new Money((decimal)(p / UnitsNet.Mass.FromPounds(1).Kilograms), "USD") : null;
        return new OfferedMaterial(material, analysis, price, null, true, MassPerArea.FromPoundsPerAcre(most), 0);
    }
}
