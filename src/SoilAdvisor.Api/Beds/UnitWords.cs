using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;
using UnitsNet;
using UnitsNet.Units;

namespace SoilAdvisor.Api.Beds;

/// <summary>Written measures of beds and materials, from words to types. A missing or unknown unit is asked for.</summary>
internal static class UnitWords
{
    private static readonly Dictionary<string, LengthUnit> Lengths = new(StringComparer.Ordinal)
    {
        ["ft"] = LengthUnit.Foot,
        ["in"] = LengthUnit.Inch,
        ["yd"] = LengthUnit.Yard,
        ["m"] = LengthUnit.Meter,
        ["cm"] = LengthUnit.Centimeter,
    };

    private static readonly Dictionary<string, AreaUnit> Areas = new(StringComparer.Ordinal)
    {
        ["sq ft"] = AreaUnit.SquareFoot,
        ["acre"] = AreaUnit.Acre,
        ["m2"] = AreaUnit.SquareMeter,
        ["ha"] = AreaUnit.Hectare,
    };

    private static readonly Dictionary<string, MassUnit> Masses = new(StringComparer.Ordinal)
    {
        ["lb"] = MassUnit.Pound,
        ["oz"] = MassUnit.Ounce,
        ["short-ton"] = MassUnit.ShortTon,
        ["g"] = MassUnit.Gram,
        ["kg"] = MassUnit.Kilogram,
        ["t"] = MassUnit.Tonne,
    };

    private static readonly Dictionary<string, VolumeUnit> Volumes = new(StringComparer.Ordinal)
    {
        ["gal"] = VolumeUnit.UsGallon,
        ["quart"] = VolumeUnit.UsQuart,
        ["pint"] = VolumeUnit.UsPint,
        ["cup"] = VolumeUnit.UsCustomaryCup,
        ["cubic-foot"] = VolumeUnit.CubicFoot,
        ["L"] = VolumeUnit.Liter,
    };

    private static readonly Dictionary<string, Func<double, MassPerArea>> Rates = new(StringComparer.Ordinal)
    {
        ["lb/acre"] = MassPerArea.FromPoundsPerAcre,
        ["ton/acre"] = value => MassPerArea.FromPoundsPerAcre(value * 2000),
        ["lb/1000-sq-ft"] = MassPerArea.FromPoundsPer1000SquareFeet,
        ["lb/100-sq-ft"] = value => MassPerArea.FromPoundsPer1000SquareFeet(value * 10),
        ["kg/ha"] = MassPerArea.FromKilogramsPerHectare,
        ["t/ha"] = value => MassPerArea.FromKilogramsPerHectare(value * 1000),
    };

    /// <summary>A rate of a material; null when there is none, or after a refusal.</summary>
    public static MassPerArea? ReadRate(WrittenQuantity? written, string pointer, FaultList faults)
    {
        if (written?.Value?.Number is not { } value || faults.AnyWithin(pointer))
        {
            return null;
        }

        if (written.Unit is { } unit && Rates.TryGetValue(unit.Trim(), out var read))
        {
            return read((double)value);
        }

        faults.Add(PointerPath.Down(pointer, "unit"), "unknown-unit", $"\"{Rules.Clip(written.Unit)}\" is not a unit of a rate.", $"Use one of: {string.Join(", ", Rates.Keys)}.");
        return null;
    }

    public static Length? ReadLength(WrittenQuantity? written, string pointer, FaultList faults) =>
        Read(written, Lengths, pointer, faults) is var (value, unit) ? Length.From(value, unit) : null;

    public static Area? ReadArea(WrittenQuantity? written, string pointer, FaultList faults) =>
        Read(written, Areas, pointer, faults) is var (value, unit) ? Area.From(value, unit) : null;

    public static Volume? ReadVolume(WrittenQuantity? written, string pointer, FaultList faults) =>
        Read(written, Volumes, pointer, faults) is var (value, unit) ? Volume.From(value, unit) : null;

    public static Mass? ReadMass(WrittenQuantity? written, string pointer, FaultList faults) =>
        Read(written, Masses, pointer, faults) is var (value, unit) ? Mass.From(value, unit) : null;

    /// <summary>A word of a closed list; null after a refusal with the nearest words.</summary>
    public static TValue? ReadWord<TValue>(string? text, IReadOnlyDictionary<string, TValue> words, string what, string code, string pointer, FaultList faults)
        where TValue : struct
    {
        if (text is not null && words.TryGetValue(text.Trim(), out var value))
        {
            return value;
        }

        var near = text is null ? [] : NearestNames.Of(text, words.Keys);
        faults.Add(
            pointer,
            text is null ? "unit-missing" : code,
            text is null ? $"{what} is missing." : $"\"{Rules.Clip(text)}\" is not a known {what.ToLowerInvariant().Replace("the ", "", StringComparison.Ordinal)}.",
            near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}? Use one of: {string.Join(", ", words.Keys)}." : $"Use one of: {string.Join(", ", words.Keys)}.");
        return null;
    }

    private static (double Value, TUnit Unit)? Read<TUnit>(WrittenQuantity? written, Dictionary<string, TUnit> units, string pointer, FaultList faults)
        where TUnit : struct =>
        written?.Value?.Number is { } value && !faults.AnyWithin(pointer) && ReadWord(written.Unit, units, "The unit", "unknown-unit", PointerPath.Down(pointer, "unit"), faults) is { } unit
            ? ((double)value, unit)
            : null;
}
