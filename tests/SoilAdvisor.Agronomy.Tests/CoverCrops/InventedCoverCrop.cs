using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Tests.CoverCrops;

/// <summary>Invented cover crops for tests of the mechanism. Their figures come from nowhere unless a test says otherwise.</summary>
internal static class InventedCoverCrop
{
    public static readonly Citation Source = new("invented", null, Evidence.Seen);

    public static readonly CoverCrop Warm = Of("warm-cover", "Polygonaceae", "summer annual", "warm", Range("days-to-use", 35, 40, "days"));

    public static readonly CoverCrop CoolAnnual = Of("cool-cover", "Boraginaceae", "cool annual", "cool", Range("days-to-use", 42, 56, "days"));

    public static readonly CoverCrop WinterRye = Of("winter-grain", "Poaceae", "winter annual", "cool");

    public static readonly CoverCrop WinterVetch = Of("winter-legume", "Fabaceae", "winter annual", "cool");

    public static readonly PlantBackRule TwoWeeks = new("general", "settling", [], [], "killed-green", 14, null, true, "two weeks", Source);

    public static CoverCropTables Tables(params IReadOnlyList<CoverCrop> species) => new(species, [], [TwoWeeks], [], [], [], []);

    public static CoverCropSelection Ask(Gap gap, IReadOnlyList<CoverCrop> covers, IReadOnlyList<string> aims, FrostDates? frost, Crop? last, Crop? next, Area? area, bool phosphorusShort, MassPerArea? by) =>
        CoverCropChoices.For(
            new CoverCropQuestion(gap)
            {
                Aims = aims,
                Climate = FarmClimate.Unknown with { Frost = frost },
                LastCrop = last,
                NextCrop = next,
                Area = area,
                PhosphorusShort = phosphorusShort,
                PhosphateShort = by,
            },
            Tables(covers));

    public static CoverCrop Of(string id, string family, string lifeCycle, string season, params CoverCropValue[] values) =>
        new(id, id, null, family, lifeCycle, season, values, Source);

    public static CoverCropValue Figure(string property, decimal value, string unit) => new(property, value, null, null, unit, null, Cited(property), null);

    public static CoverCropValue Range(string property, decimal low, decimal high, string unit) => new(property, null, low, high, unit, null, Cited(property), null);

    public static CoverCropValue Text(string property, string text) => new(property, null, null, null, "", text, Cited(property), null);

    public static Crop Vegetable(string family) => new("vegetable", "Vegetable", null, family, "leaves", SoilContact.Contact, null, false, [], [], Source);

    private static Citation Cited(string property) => new("invented", property, Evidence.Seen);
}
