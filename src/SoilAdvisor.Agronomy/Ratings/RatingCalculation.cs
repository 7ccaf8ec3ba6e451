using System.Globalization;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>From a reading to a class of one scale: unit, printed precision, limits. The comparison itself is <see cref="ClassLimits"/>.</summary>
internal static class RatingCalculation
{
    private static readonly Assumption ExtractableLead = new(
        "extractable-lead",
        "This is extractable lead: a screen, and no measure of the lead in the soil. Ask the laboratory for total lead, and read only that on your health authority's table.",
        Citation.CommonPractice);

    public static Answer<Rating> Rate(Guide guide, RatingScale scale, SoilTest test, Reading reading, WorkingSheet? working) =>
        ReadingConversion.To(reading, scale.Unit, test.PoundsPerAcreFactor).Then(converted => Rate(guide, scale, test, reading, converted, working));

    /// <summary>Rates an amount that is already in the scale's unit: a converted reading, or the value of the guide's index.</summary>
    public static Answer<Rating> Rate(Guide guide, RatingScale scale, SoilTest test, Reading reading, ConvertedReading converted, WorkingSheet? working)
    {
        var cec = scale.NeedsCec ? RatingScale.CecOf(test) : null;
        var index = ClassOf(scale, converted.Amount, cec);
        if (index < 0)
        {
            return Answer<Rating>.Refused(
                "outside-reference-range",
                $"{scale.Index ?? Words.Analytes.IdOf(reading.Analyte)} {converted.Amount} {Words.Units.IdOf(scale.Unit)} lies outside the reference range of {guide.Id}, which is not a rating.",
                "Take it as information; ask your adviser before acting on it.");
        }

        var rating = new Rating(guide.Id, reading, converted.Amount, scale, index, cec, Assumptions(guide, scale, test, reading, converted, index, cec));
        if (working is not null)
        {
            Write(working, test, rating, converted);
        }

        return Answer<Rating>.Given(rating);
    }

    // "Less than 5" lies in the lowest class that any such value reaches; "more than 900" in the class just above 900, the lowest it can be.
    private static int ClassOf(RatingScale scale, Amount amount, decimal? cec) =>
        amount.Kind == AmountKind.Below ? (scale.Classes[0].Lower is null or 0 ? 0 : scale.IndexOf(0, cec)) : scale.IndexOf(amount.Number, cec);

    private static IReadOnlyList<Assumption> Assumptions(Guide guide, RatingScale scale, SoilTest test, Reading reading, ConvertedReading converted, int index, decimal? cec)
    {
        List<Assumption>? found = null;
        if (converted.Assumptions.Count > 0)
        {
            (found ??= []).AddRange(converted.Assumptions);
        }

        if (CalcareousSoil.Warning(test, reading) is { } calcareous)
        {
            (found ??= []).Add(calcareous);
        }

        if (reading.Analyte == Analyte.Pb)
        {
            (found ??= []).Add(ExtractableLead);
        }

        if (scale.Method.Detection == ScaleDetection.NotStated && reading.Analyte == Analyte.P && reading.Method.Extractant is not null)
        {
            (found ??= []).Add(new Assumption(
                "guide-detection-not-stated",
                $"The guide {guide.Id} does not print how phosphorus was measured in the extract; its limits are read with your result as it is.",
                Citation.OurJudgement));
        }

        if (scale.PrintedDecimals is { } decimals && converted.Amount.Kind == AmountKind.Measured && Math.Round(converted.Amount.Number, decimals) != converted.Amount.Number)
        {
            (found ??= []).Add(new Assumption(
                "rounded-to-printed-bins",
                string.Create(CultureInfo.InvariantCulture, $"The guide {guide.Id} prints whole steps for {Words.Analytes.IdOf(reading.Analyte)}; {converted.Amount.Number} {Words.Units.IdOf(scale.Unit)} is rounded to {Math.Round(converted.Amount.Number, decimals, MidpointRounding.AwayFromZero)} before it is looked up."),
                Citation.CommonPractice));
        }

        if (converted.Amount.Kind != AmountKind.Measured && MayLieHigher(scale, converted.Amount, index, cec))
        {
            (found ??= []).Add(new Assumption(
                "open-result",
                $"{Words.Analytes.IdOf(reading.Analyte)} was reported as {reading.Amount} {Words.Units.IdOf(reading.Unit)}; it is rated in the lowest class it can be ({scale.Classes[index].Name}) and may lie higher.",
                Citation.OurJudgement));
        }

        return found ?? (IReadOnlyList<Assumption>)[];
    }

    private static bool MayLieHigher(RatingScale scale, Amount amount, int index, decimal? cec) =>
        scale.UpperOf(index, cec) is { } upper && (amount.Kind == AmountKind.Above || amount.Number > upper);

    private static void Write(WorkingSheet working, SoilTest test, Rating rating, ConvertedReading converted)
    {
        var symbol = rating.Scale.Index ?? Words.Analytes.IdOf(rating.Analyte);
        var unit = Words.Units.IdOf(rating.Scale.Unit);
        if (converted.Factor != 1m)
        {
            working.LookUp(
                "unit-conversion",
                $"{symbol} in the guide's unit",
                string.Create(CultureInfo.InvariantCulture, $"{symbol} = {rating.Reading.Amount} {Words.Units.IdOf(rating.Reading.Unit)} × {converted.Factor:0.########}"),
                [new WorkingInput(symbol, "as reported", null, rating.Reading.Amount.ToString(), Words.Units.IdOf(rating.Reading.Unit), Origin.Given(rating.Reading.Where))],
                string.Create(CultureInfo.InvariantCulture, $"{rating.Amount} {unit}"),
                Citation.UnitDefinitions);
        }

        working.LookUp(
            "rating",
            $"{symbol} read on the scale of {rating.Guide}",
            Limits(rating, symbol, unit),
            [
                new WorkingInput(symbol, "soil test", null, rating.Amount.ToString(), unit, converted.Factor == 1m && rating.Scale.Index is null ? Origin.Given(rating.Reading.Where) : Origin.Line(working.LastLine)),
                .. rating.Scale.Conditions.Select(c => Deciding(c, test, rating.Scale)),
            ],
            rating.Class.Name,
            rating.Source);
    }

    private static WorkingInput Deciding(ScaleCondition condition, SoilTest test, RatingScale scale) => new(
        Words.Analytes.IdOf(condition.Analyte),
        $"these limits hold for {condition}",
        null,
        condition.AmountIn(test, scale).ToString(),
        Words.Units.IdOf(condition.UnitOn(scale)),
        Origin.Given(test.Of(condition.Analyte)!.Where));

    private static string Limits(Rating rating, string symbol, string unit)
    {
        var c = rating.Class;
        var lower = rating.Scale.LowerOf(rating.ClassIndex, rating.Cec);
        var upper = rating.Scale.UpperOf(rating.ClassIndex, rating.Cec);
        var left = lower is { } l ? string.Create(CultureInfo.InvariantCulture, $"{l:0.######} {(c.LowerIncluded ? "≤" : "<")} ") : "";
        var right = upper is { } u ? string.Create(CultureInfo.InvariantCulture, $" {(c.UpperIncluded ? "≤" : "<")} {u:0.######}") : "";
        return $"{left}{symbol}{right} {unit}: {c.Name}";
    }
}
