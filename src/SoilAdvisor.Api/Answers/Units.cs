using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Api.Answers;

/// <summary>Numbers in the units that were asked for, rounded once: six significant digits, far below what a soil test knows.</summary>
internal readonly record struct Units(bool Metric)
{
    private const int Digits = 6;

    public Quantity PerArea(MassPerArea amount) => Metric
        ? new Quantity(Rounded(amount.KilogramsPerHectare), "kg/ha")
        : new Quantity(Rounded(amount.PoundsPerAcre), "lb/acre");

    public QuantityRange PerArea(MassPerArea low, MassPerArea high) => new(PerArea(low).Value, PerArea(high).Value, PerArea(high).Unit);

    public Quantity Of(Mass mass) => Metric ? new Quantity(Rounded(mass.Kilograms), "kg") : new Quantity(Rounded(mass.Pounds), "lb");

    public Quantity Of(Area area) => Metric ? new Quantity(Rounded(area.SquareMeters), "m2") : new Quantity(Rounded(area.SquareFeet), "sq ft");

    public Quantity Of(Length length) => Metric ? new Quantity(Rounded(length.Centimeters), "cm") : new Quantity(Rounded(length.Inches), "in");

    public static decimal Rounded(double value) => Rounded(value, Digits);

    /// <summary>A finite number to so many significant digits.</summary>
    public static decimal Rounded(double value, int digits)
    {
        if (value == 0 || Math.Abs(value) < 1e-15)
        {
            return 0;
        }

        var decimals = Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 20);
        return decimal.Round((decimal)value, decimals, MidpointRounding.AwayFromZero) / 1.000000000000000000000000000000m;
    }
}
