using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Tests.Materials;
using SoilAdvisor.Agronomy.Tests.Ratings;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static SoilAdvisor.Agronomy.Tests.Materials.InventedMaterial;

namespace SoilAdvisor.Agronomy.Tests.Certification;

/// <summary>An invented bed of 100 sq ft with crops, manure and rules. The sections of the rules are those of the regulation; the wording is the test's.</summary>
internal static class InventedBed
{
    public static readonly DateOnly Today = new(2026, 3, 1);

    public static readonly BedNeed NoNeed = new([], [], [], []);

    public static readonly Crop Carrot = Vegetable("carrot", "root", SoilContact.Contact);

    public static readonly Crop Corn = Vegetable("corn", "ears", SoilContact.NoContact);

    public static readonly Crop Flowers = Vegetable("flowers", "none", SoilContact.NoContact);

    public static readonly Material RawManure = Meal with { Id = "raw-manure", Name = "Raw manure", Category = "manure", Manure = ManureKind.Raw, Status = OrganicStatus.Restricted, Rule = "205.203(c)(1)" };

    public static readonly Material ManureCompost = RawManure with { Id = "manure-compost", Name = "Manure compost", Category = "compost", Manure = ManureKind.Composted };

    public static readonly Material Pellets = RawManure with { Id = "pellets", Name = "Pellets", Category = "processed-manure", Manure = ManureKind.Processed };

    public static readonly IReadOnlyDictionary<string, OrganicRule> Rules = new[]
    {
        ("synthetic-only-if-listed", "205.105(a)"),
        ("nonsynthetic-unless-listed", "205.105(b); 205.602"),
        ("raw-manure-120", "205.203(c)(1)(ii)"),
        ("raw-manure-90", "205.203(c)(1)(iii)"),
        ("raw-manure-non-food", "205.203(c)(1)(i)"),
        ("compost-process", "205.203(c)(2)"),
        ("compost-plant-only", "205.203(c)(3)"),
        ("processed-manure", "NOP 5006"),
        ("manure-residues", "205.203(c)"),
        ("mined-low-solubility", "205.203(d)(2)"),
        ("magnesium-sulfate-deficiency", "205.601(j)(6)"),
        ("micronutrient-deficiency", "205.601(j)(7)"),
        ("sodium-nitrate", "205.602(h)"),
        ("lime-as-mined", "205.203(d)(2); 205.105(a)"),
        ("gypsum-as-mined", "205.203(d)(2); 205.105(a)"),
    }.ToDictionary(r => r.Item1, r => new OrganicRule(r.Item1, "invented standard", r.Item2, r.Item1, "A condition.", InventedMaterial.Source));

    public static Crop Vegetable(string id, string part, SoilContact contact, string? boron = null, bool sensitive = false) =>
        new(id, id, null, "family", part, contact, boron, sensitive, [], [], InventedMaterial.Source);

    public static Planting Planting(Crop crop, DateOnly? firstHarvest = null, DateOnly? harvestEnd = null, SoilContact? contact = null) =>
        new(crop, null, firstHarvest, harvestEnd, null, contact);

    public static Bed Bed(params Planting[] plantings) =>
        new("bed-1", Area.FromSquareFeet(100), SpreadBasis.BedTop, InventedGuide.Test(), "field", plantings, [], [], null, null, "100 sq ft", []);

    public static AppliedMaterial Spread(Material material, DateOnly date, DateOnly? incorporated) => new(material, Analysis(material), Mass.FromPounds(10), date, incorporated);

    public static MaterialApplication Planned(Material material, DateOnly? spreadBy = null, int planting = 0, double poundsPerAcre = 100) =>
        new(Offered(material), planting, MassPerArea.FromPoundsPerAcre(poundsPerAcre), Mass.FromPounds(1), null, null, "before sowing", spreadBy, "test");

    public static NutrientNeed Need(PlantNutrient nutrient, string crop, double low, double high) => new(
        nutrient, 0, crop, new RateRange(MassPerArea.FromPoundsPerAcre(low), MassPerArea.FromPoundsPerAcre(high)), null, null, "table", null, null, [], null, [], new Citation("invented", "rate", Evidence.Seen));
}
