using System.Globalization;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace SoilAdvisor.Reports.Wording;

/// <summary>Amounts as a grower reads them at the bench, always with their unit.</summary>
internal sealed class Measures(ReportUnits units)
{
    // Less than half a pound an acre is nothing that a crop or a test would show.
    private const double WorthSaying = 0.5;

    public string Weight(Mass mass) => units == ReportUnits.Us ? Weights.PoundsAndOunces(mass) : KilogramsOrGrams(mass);

    // The three rates that the contract promises, the reader's own system first.
    public IReadOnlyList<string> SpreadRate(MassPerArea rate)
    {
        var acre = Figure.Short(rate.PoundsPerAcre) + " lb/acre";
        var hectare = Figure.Short(rate.KilogramsPerHectare) + " kg/ha";
        var small = Figure.Short(rate.PoundsPer1000SquareFeet) + " lb/1000 sq ft";
        return units == ReportUnits.Us ? [acre, hectare, small] : [hectare, acre, small];
    }

    public string Rate(MassPerArea rate) => Figure.Printed(Number(rate)) + " " + RateUnit;

    public string Range(MassPerArea low, MassPerArea high) =>
        low == high ? Rate(low) : $"{Figure.Printed(Number(low))} to {Rate(high)}";

    // What a guide prints is quoted in both systems, so that neither reader has to trust a conversion they cannot see.
    public IReadOnlyList<string> BothRanges(MassPerArea low, MassPerArea high)
    {
        var other = new Measures(units == ReportUnits.Us ? ReportUnits.Metric : ReportUnits.Us);
        return [Range(low, high), other.Range(low, high)];
    }

    public string Ground(Area area) => units == ReportUnits.Us
        ? Figure.Printed(area.SquareFeet) + " sq ft"
        : Figure.Printed(area.SquareMeters) + " m²";

    public string Scoop(VolumeMeasure? measure)
    {
        if (measure is null)
        {
            return "weigh it";
        }

        var volume = Volume.From(measure.Value, UnitOf(measure.Unit));
        if (units == ReportUnits.Metric)
        {
            return volume.CubicMeters >= 0.5 ? Figure.Short(volume.CubicMeters) + " m³" : Figure.Short(volume.Liters) + " L";
        }

        var name = measure.Unit switch { "cubic-foot" => "cubic foot", "cubic-yard" => "cubic yard", "gal" => "gallon", var same => same };
        var quarters = Math.Round(measure.Value * 4, MidpointRounding.AwayFromZero) / 4;
        if (measure.Value < 0.125)
        {
            return $"under 1/8 {name}: weigh it";
        }

        // A quarter is what a measure is marked in; where it would be off by more than a twentieth the figure is given instead.
        var isFair = Math.Abs(quarters - measure.Value) <= measure.Value / 20;
        var plural = (isFair ? quarters : measure.Value) > 1 ? name == "cubic foot" ? "cubic feet" : name + "s" : name;
        return $"{(isFair ? Quarters(quarters) : measure.Value.ToString("0.##", CultureInfo.InvariantCulture))} {plural}";
    }

    public string MassName => units == ReportUnits.Us ? "pound" : "kilogram";

    /// <summary>Money for each pound or kilogram, from money for each pound.</summary>
    public string Price(Money perPound)
    {
        var value = units == ReportUnits.Us ? perPound.Value : perPound.Value / (decimal)Mass.FromPounds(1).Kilograms;
        return value.ToString("#,0.00", CultureInfo.InvariantCulture) + " " + perPound.Currency;
    }

    public string Across(Length length) => units == ReportUnits.Us ? Figure.Short(length.Feet) + " ft" : Figure.Short(length.Meters) + " m";

    public string Held(Volume volume) => units == ReportUnits.Metric ? Figure.Short(volume.Liters) + " L"
        : volume.UsGallons >= 1 ? Figure.Short(volume.UsGallons) + " gallons"
        : Figure.Short(volume.UsQuarts) + " quart" + (volume.UsQuarts > 1 ? "s" : "");

    /// <summary>"217.8 lb/acre for each lb", from the rate of one pound caught.</summary>
    public string PerUnitCaught(MassPerArea perPound) => units == ReportUnits.Us
        ? $"{Figure.Printed(perPound.PoundsPerAcre)} (weight in lb, rate in lb/acre)"
        : $"{Figure.Printed(perPound.KilogramsPerHectare / Mass.FromPounds(1).Kilograms)} (weight in kg, rate in kg/ha)";

    /// <summary>"2 1/2 buckets and 3/4 scoop", or the weight to read off the scale.</summary>
    public string MeasuredOut(MeasuredAmount amount)
    {
        if (amount.How != MeasuringWay.ByVolume)
        {
            return amount.How == MeasuringWay.Exactly ? $"weigh {Weight(amount.Measured)}, on a finer scale" : $"weigh {Weight(amount.Measured)}";
        }

        var parts = new List<string>();
        Add(amount.HalfBuckets / 2.0, "bucket");
        Add(amount.QuarterScoops / 4.0, "scoop");
        return string.Join(" and ", parts);

        void Add(double number, string name)
        {
            if (number > 0)
            {
                parts.Add($"{Quarters(number)} {name}{(number > 1 ? "s" : "")}");
            }
        }
    }

    /// <summary>What rounding does, as a percent of the amount and in nutrients.</summary>
    public string Rounding(MeasuredSpread spread)
    {
        var percent = spread.Amount.Change * 100;
        if (Math.Abs(percent) < 0.1)
        {
            return "under 0.1 %";
        }

        var changes = spread.Changes
            .Where(c => Math.Abs(Number(c.Change)) >= WorthSaying)
            .Select(c => $"{Signed(Number(c.Change))} {c.Nutrient.Words()}")
            .ToList();
        return changes.Count == 0 ? $"{Signed(percent)} %" : $"{Signed(percent)} %: {string.Join(", ", changes)} ({RateUnit})";

        static string Signed(double value) => (value > 0 ? "+" : "−") + Math.Abs(value).ToString("0.#", CultureInfo.InvariantCulture);
    }

    public static string Cost(Money? money) => money is { } m ? m.Value.ToString("#,0.00", CultureInfo.InvariantCulture) + " " + m.Currency : "no price given";

    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    private string RateUnit => units == ReportUnits.Us ? "lb/acre" : "kg/ha";

    private double Number(MassPerArea rate) => units == ReportUnits.Us ? rate.PoundsPerAcre : rate.KilogramsPerHectare;

    private static string KilogramsOrGrams(Mass mass)
    {
        if (mass.Kilograms >= 100)
        {
            return Math.Round(mass.Kilograms, MidpointRounding.AwayFromZero).ToString("#,0", CultureInfo.InvariantCulture) + " kg";
        }

        var grams = Math.Round(mass.Grams, MidpointRounding.AwayFromZero);
        return grams >= 1000 ? (grams / 1000).ToString("0.##", CultureInfo.InvariantCulture) + " kg"
            : grams == 0 && mass.Grams > 0 ? "under 1 g"
            : grams.ToString("0", CultureInfo.InvariantCulture) + " g";
    }

    private static string Quarters(double quarters)
    {
        var whole = Math.Floor(quarters);
        var part = (quarters - whole) switch { 0.25 => "1/4", 0.5 => "1/2", 0.75 => "3/4", _ => "" };
        var number = whole.ToString("#,0", CultureInfo.InvariantCulture);
        return part.Length == 0 ? number : whole == 0 ? part : number + " " + part;
    }

    private static VolumeUnit UnitOf(string unit) => unit switch
    {
        "cup" => VolumeUnit.UsCustomaryCup,
        "pint" => VolumeUnit.UsPint,
        "gal" => VolumeUnit.UsGallon,
        "cubic-foot" => VolumeUnit.CubicFoot,
        "cubic-yard" => VolumeUnit.CubicYard,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "Not a volume measure of the trade."),
    };
}
