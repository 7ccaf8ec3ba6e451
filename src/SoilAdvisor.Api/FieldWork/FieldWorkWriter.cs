using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;
using Length = UnitsNet.Length;
using Volume = UnitsNet.Volume;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>Writes how a plan is carried out.</summary>
internal static class FieldWorkWriter
{
    public static FieldWorkAnswer? Write(FieldWorkPlan? work, FarmPlan plan, Calculation calculation)
    {
        if (work is null)
        {
            return null;
        }

        var spread = plan.Beds.ToDictionary(b => b.Bed.Id, b => BedReader.WordOf(b.Bed.Spread), StringComparer.Ordinal);
        return new FieldWorkAnswer(
            Write(work.Measures, calculation),
            [.. work.Passes.Select(p => Write(p, calculation))],
            [.. work.Mixes.Select(m => Write(m, calculation))],
            work.NotMixed,
            [.. work.Strips.Select(s => new StripAnswer(
                s.Material.Id, s.Material.Name, RateAnswer.Of(s.Rate, null, spread[s.Beds[0]], calculation.Units), s.Beds, calculation.Units.Of(s.Target), calculation.Units.PerArea(s.PerPound), calculation.Cite(Citation.OurArithmetic)))],
            work.Check is { } check
                ? new ProposedCheckAnswer(WordOf(check.Kind), check.Bed, check.What, check.Why, Day(check.From), Day(check.To), calculation.Cite(check.Source))
                : null,
            calculation.Assumptions(work.Measures.Assumptions),
            calculation.Asked.Working ? WorkingWriter.Write(work.Working, calculation.Bibliography) : null);
    }

    private static MeasuresAnswer Write(FieldMeasures measures, Calculation calculation) => new(
        Of(measures.Bucket, calculation.Units.Metric),
        measures.Scoop is { } scoop ? Of(scoop, calculation.Units.Metric) : null,
        measures.ScaleMark is { } mark ? calculation.Units.Of(mark) : null,
        Of(measures.StripLength, calculation.Units.Metric),
        Of(measures.SwathWidth, calculation.Units.Metric),
        calculation.Cite(Citation.OurJudgement));

    private static PassAnswer Write(FieldPass pass, Calculation calculation) => new(
        pass.Order, Day(pass.By), pass.Material.Id, pass.Material.Name, pass.Dose, pass.Rules, calculation.Units.Of(pass.Measured), [.. pass.Beds.Select(b => Write(b, calculation))], calculation.Cite(Citation.CommonPractice));

    private static MeasuredAnswer Write(MeasuredSpread spread, Calculation calculation)
    {
        var amount = spread.Amount;
        var byVolume = amount.How == MeasuringWay.ByVolume;
        return new MeasuredAnswer(
            spread.Bed,
            spread.PlantingIndex,
            calculation.Units.Of(amount.Planned),
            calculation.Units.Of(amount.Measured),
            WordOf(amount.How),
            byVolume ? amount.HalfBuckets / 2m : null,
            byVolume ? amount.QuarterScoops / 4m : null,
            Units.Rounded(amount.Change * 100, 3),
            [.. spread.Changes.Select(c => new SupplyChangeAnswer(c.Nutrient.Symbol(), calculation.Units.PerArea(c.Change)))],
            spread.HeldBy,
            calculation.Cite(amount.Density?.Source ?? Citation.OurArithmetic));
    }

    private static MixAnswer Write(MixingBatch mix, Calculation calculation) => new(
        Day(mix.By),
        [.. mix.Parts.Select(p => new MixPartAnswer(p.Material.Id, p.Material.Name, calculation.Units.Of(p.Weight)))],
        calculation.Units.Of(mix.Weight),
        [.. mix.Portions.Select(p => new MixPortionAnswer(p.Bed, calculation.Units.Of(p.Weight)))],
        calculation.Units.Of(mix.Left),
        calculation.Cite(Citation.OurArithmetic));

    private static string? Day(DateOnly? day) => day is { } date ? Dates.Write(date) : null;

    private static Quantity Of(Volume volume, bool metric) => metric ? new Quantity(Units.Rounded(volume.Liters), "L") : new Quantity(Units.Rounded(volume.UsGallons), "gal");

    private static Quantity Of(Length length, bool metric) => metric ? new Quantity(Units.Rounded(length.Meters), "m") : new Quantity(Units.Rounded(length.Feet), "ft");

    private static string WordOf(MeasuringWay way) => way switch
    {
        MeasuringWay.ByVolume => "by-volume",
        MeasuringWay.ToScaleMark => "to-scale-mark",
        _ => "exactly",
    };

    private static string WordOf(ProposedCheckKind kind) => kind switch
    {
        ProposedCheckKind.NitrateTest => "nitrate-test",
        ProposedCheckKind.UntreatedStrip => "untreated-strip",
        _ => "resampling",
    };
}
