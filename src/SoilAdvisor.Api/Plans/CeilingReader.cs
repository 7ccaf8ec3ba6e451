using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Plans;

/// <summary>Turns ceilings, which the validator has judged, into types. The words are those of the answers, so that an oxide is never read as an element.</summary>
internal static class CeilingReader
{
    private const string NoReason = "a ceiling named in the request";

    private static readonly Dictionary<string, Nutrient> Nutrients = Enum.GetValues<Nutrient>().ToDictionary(n => n.Symbol(), StringComparer.Ordinal);

    public static IReadOnlyList<NutrientCeiling> Read(IReadOnlyList<WrittenCeiling>? written, string pointer, FaultList faults)
    {
        var ceilings = new List<NutrientCeiling>();
        for (var i = 0; i < Math.Min(written?.Count ?? 0, Limits.PerBed); i++)
        {
            var (here, one) = (PointerPath.Down(pointer, i), written![i]);
            if (!faults.AnyWithin(here)
                && NutrientOf(one.Nutrient, PointerPath.Down(here, "nutrient"), faults) is { } nutrient
                && UnitWords.ReadRate(new WrittenQuantity { Value = one.Value, Unit = one.Unit }, here, faults) is { } most)
            {
                ceilings.Add(new NutrientCeiling(nutrient, most, string.IsNullOrWhiteSpace(one.Reason) ? NoReason : one.Reason.Trim()));
            }
        }

        return ceilings;
    }

    private static Nutrient? NutrientOf(string? text, string pointer, FaultList faults)
    {
        if (Nutrients.TryGetValue(text!.Trim(), out var nutrient))
        {
            return nutrient;
        }

        var known = string.Join(", ", Nutrients.Keys);
        var suggestion = text.Trim() switch
        {
            "P" => "Phosphorus counts as phosphate here: multiply P by 2.29 and write total P2O5, or P2O5 for what is available.",
            "K" => "Potassium counts as potash here: multiply K by 1.2 and write K2O.",
            _ => $"Use one of: {known}.",
        };
        faults.Add(pointer, "unknown-nutrient", $"\"{Rules.Clip(text)}\" is not a nutrient that has a ceiling.", suggestion);
        return null;
    }
}
