using UnitsNet;
using UnitsNet.Units;

namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass spread on an area of ground that is actually spread. Zero by default; always finite; may be negative as a difference.
/// </summary>
public readonly record struct MassPerArea : IComparable<MassPerArea>
{
    private static readonly double PoundPerAcre = Mass.FromPounds(1).Kilograms / Area.FromAcres(1).SquareMeters;

    private readonly double kilogramsPerSquareMeter;

    private MassPerArea(double value) => kilogramsPerSquareMeter = double.IsFinite(value)
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A mass per area must be finite.");

    /// <summary>Pounds per acre (international acre of 43,560 square feet).</summary>
    public double PoundsPerAcre => kilogramsPerSquareMeter / PoundPerAcre;

    /// <summary>Kilograms per hectare.</summary>
    public double KilogramsPerHectare => kilogramsPerSquareMeter * 10_000;

    /// <summary>Pounds per 1000 square feet.</summary>
    public double PoundsPer1000SquareFeet => PoundsPerAcre / 43.56;

    /// <summary>True when exactly nothing.</summary>
    public bool IsZero => kilogramsPerSquareMeter == 0;

    /// <summary>A mass on an area. Throws when the area is not above zero.</summary>
    /// <param name="mass">The mass.</param>
    /// <param name="on">The area.</param>
    public static MassPerArea Of(Mass mass, Area on) => on.SquareMeters > 0
        ? new(mass.Kilograms / on.SquareMeters)
        : throw new ArgumentOutOfRangeException(nameof(on), "The area must be above zero.");

    /// <summary>From pounds per acre.</summary>
    /// <param name="value">Pounds per acre.</param>
    public static MassPerArea FromPoundsPerAcre(double value) => new(value * PoundPerAcre);

    /// <summary>From kilograms per hectare.</summary>
    /// <param name="value">Kilograms per hectare.</param>
    public static MassPerArea FromKilogramsPerHectare(double value) => new(value / 10_000);

    /// <summary>From pounds per 1000 square feet.</summary>
    /// <param name="value">Pounds per 1000 square feet.</param>
    public static MassPerArea FromPoundsPer1000SquareFeet(double value) => FromPoundsPerAcre(value * 43.56);

    /// <summary>The mass that an area takes.</summary>
    /// <param name="area">The ground that is spread.</param>
    public Mass On(Area area) => Mass.FromKilograms(kilogramsPerSquareMeter * area.SquareMeters);

    /// <summary>In any unit of mass over any unit of area.</summary>
    /// <param name="mass">Unit of mass.</param>
    /// <param name="area">Unit of area.</param>
    public double Per(MassUnit mass, AreaUnit area) =>
        Mass.FromKilograms(kilogramsPerSquareMeter).As(mass) * Area.From(1, area).SquareMeters;

    /// <inheritdoc/>
    public int CompareTo(MassPerArea other) => kilogramsPerSquareMeter.CompareTo(other.kilogramsPerSquareMeter);

    /// <summary>Sum.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static MassPerArea operator +(MassPerArea a, MassPerArea b) => new(a.kilogramsPerSquareMeter + b.kilogramsPerSquareMeter);

    /// <summary>Difference; may be negative.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static MassPerArea operator -(MassPerArea a, MassPerArea b) => new(a.kilogramsPerSquareMeter - b.kilogramsPerSquareMeter);

    /// <summary>Multiple.</summary>
    /// <param name="a">The rate.</param>
    /// <param name="factor">Pure number.</param>
    public static MassPerArea operator *(MassPerArea a, double factor) => new(a.kilogramsPerSquareMeter * factor);

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator <(MassPerArea a, MassPerArea b) => a.CompareTo(b) < 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator >(MassPerArea a, MassPerArea b) => a.CompareTo(b) > 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator <=(MassPerArea a, MassPerArea b) => a.CompareTo(b) <= 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator >=(MassPerArea a, MassPerArea b) => a.CompareTo(b) >= 0;

    /// <summary>The larger of two.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static MassPerArea Larger(MassPerArea a, MassPerArea b) => a >= b ? a : b;
}
