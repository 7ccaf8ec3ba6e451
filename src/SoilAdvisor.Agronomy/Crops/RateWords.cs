using System.Globalization;
using SoilAdvisor.Agronomy.Quantities;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>A printed rate in words, always with its unit and basis.</summary>
internal static class RateWords
{
    public static string Printed(RateRow row)
    {
        var amount = row.PrintedHigh is { } high && high != row.PrintedLow ? Invariant($"{row.PrintedLow} to {high}") : row.PrintedLow.ToString(CultureInfo.InvariantCulture);
        return $"{amount} {row.PrintedUnit} {row.Nutrient}";
    }

    public static string WithCondition(RateRow row) => row.Condition is null ? Printed(row) : $"{Printed(row)} ({row.Condition})";

    public static string NameOf(PlantNutrient nutrient) => nutrient switch
    {
        PlantNutrient.B => "boron (B)",
        PlantNutrient.Zn => "zinc (Zn)",
        PlantNutrient.Mn => "manganese (Mn)",
        PlantNutrient.Cu => "copper (Cu)",
        PlantNutrient.Fe => "iron (Fe)",
        PlantNutrient.Mo => "molybdenum (Mo)",
        _ => nutrient.Balanced()!.Value.Words(),
    };
}
