using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.MethodConversions;

/// <summary>From one method to another, only by a named published line, and not where its publication ends.</summary>
public static class MethodConversionCalculation
{
    /// <summary>A reading of the soil test by the target method of a conversion.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="conversion">The conversion that the user named.</param>
    /// <param name="working">Receives the line; null for none. The numbers are the same.</param>
    public static Answer<ReadingByAnotherMethod> Convert(SoilTest test, MethodConversion conversion, WorkingSheet? working)
    {
        if (test.Of(conversion.Analyte) is not { Amount.Kind: not AmountKind.Missing } reading)
        {
            return Answer<ReadingByAnotherMethod>.Refused(
                "conversion-without-reading",
                $"The soil test has no {Words.Analytes.IdOf(conversion.Analyte)}, which {conversion.Id} converts.",
                "Leave the conversion out, or give the reading.");
        }

        if ((OtherMethod(reading, conversion) ?? NoLine(conversion) ?? Calcareous(test, conversion)) is { } refusal)
        {
            return Answer<ReadingByAnotherMethod>.Refused(refusal);
        }

        var line = conversion.Line!;
        return ReadingConversion.To(reading, line.Unit, test.PoundsPerAcreFactor)
            .Then(inUnit => Within(inUnit, line, conversion))
            .Then(inUnit => Along(test, reading, inUnit, conversion, line, working));
    }

    private static Refusal? OtherMethod(Reading reading, MethodConversion conversion)
    {
        var (method, from) = (reading.Method, conversion.From);
        if (method.Extractant != from.Extractant || method.Procedure != from.Procedure)
        {
            return new Refusal(
                "conversion-for-another-method",
                $"{conversion.Id} starts from {Name(conversion.Analyte, from)}; this reading is {Name(conversion.Analyte, method)}.",
                "Name a conversion that starts from the method of the report, or rate it by a guide for that method.");
        }

        return from.Detection is null || method.Detection == from.Detection
            ? null
            : new Refusal(
                "conversion-for-another-detection",
                $"{conversion.Id} starts from {Name(conversion.Analyte, from)}; this reading is {Name(conversion.Analyte, method)}. Phosphorus by plasma (ICP) and by colour are two different tests.",
                "Ask the laboratory how it read the extract.");
    }

    private static Refusal? NoLine(MethodConversion conversion) => conversion.Line is not null
        ? null
        : new Refusal(
            "conversion-warned-against",
            $"From {Name(conversion.Analyte, conversion.From)} to {Name(conversion.Analyte, conversion.To)} nothing is converted: {conversion.Reason}",
            "Rate the reading by a guide for its own method, or have the soil tested by the method that your guide uses.");

    private static Refusal? Calcareous(SoilTest test, MethodConversion conversion)
    {
        if (conversion.HighestPh is not { } limit)
        {
            return null;
        }

        var ph = test.Of(Analyte.Ph)?.Amount;
        return test.FreeLime == true || (ph is { Kind: AmountKind.Measured or AmountKind.Above } known && known.Number > limit)
            ? new Refusal(
                "conversion-on-calcareous-soil",
                test.FreeLime == true
                    ? $"{conversion.Id} does not hold in soil with free lime, which uses up the acid of the extractant."
                    : Invariant($"{conversion.Id} does not hold above pH {limit}, where lime uses up the acid of the extractant; the soil pH is {ph}."),
                "Have phosphorus tested by Olsen, and choose a guide for it.")
            : null;
    }

    private static Answer<ConvertedReading> Within(ConvertedReading reading, ConversionLine line, MethodConversion conversion) =>
        reading.Amount.Number < line.Lower || reading.Amount.Number > line.Upper
            ? Answer<ConvertedReading>.Refused(
                "conversion-out-of-range",
                Invariant($"{conversion.Id} is published for {line.Lower?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "any"} to {line.Upper?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? "any"} {Words.Units.IdOf(line.Unit)}; the reading is {reading.Amount}."),
                "Have the soil tested by the method that your guide uses.")
            : Answer<ConvertedReading>.Given(reading);

    private static Answer<ReadingByAnotherMethod> Along(SoilTest test, Reading reading, ConvertedReading inUnit, MethodConversion conversion, ConversionLine line, WorkingSheet? working)
    {
        var x = (double)inUnit.Amount.Number;
        var (slope, intercept) = (new Coefficient((double)line.Slope), new Coefficient((double)line.Intercept));
        var isPh = line.Unit == ReportingUnit.PhUnits;
        if ((line.Slope * inUnit.Amount.Number) + line.Intercept is var result && (result < 0 || (isPh && result > 14)))
        {
            return Answer<ReadingByAnotherMethod>.Refused(
                "conversion-out-of-range",
                Invariant($"{conversion.Id} would give {result} {Words.Units.IdOf(line.Unit)} for {inUnit.Amount}, which cannot be."),
                "Have the soil tested by the method that your guide uses.");
        }

        var (given, cited) = (Origin.Given(reading.Where), Origin.From(conversion.Source));
        var y = isPh
            ? MethodConversionFormulas.OfPh.Of((new SoilPh(x), slope, intercept), working, given, cited, cited).Value
            : MethodConversionFormulas.Extracted.Of((SoilConcentration.FromMilligramsPerKilogram(x), slope, intercept), working, given, cited, cited).MilligramsPerKilogram;

        // One digit more than was reported: more would claim what a line through scattered points cannot know.
        var rounded = Math.Round((decimal)y, Math.Min(inUnit.Amount.Decimals + 1, 6), MidpointRounding.AwayFromZero);
        var amount = inUnit.Amount.Kind switch
        {
            AmountKind.Below => Amount.Below(rounded),
            AmountKind.Above => Amount.Above(rounded),
            _ => Amount.Measured(rounded),
        };
        var converted = new Reading(reading.Analyte, amount, line.Unit, conversion.To, reading.Where);
        return Answer<ReadingByAnotherMethod>.Given(new ReadingByAnotherMethod(
            reading,
            converted,
            conversion,
            isPh ? null : CoefficientOfVariation.FromPercent((double)line.Error),
            isPh ? PhSpread.FromPhUnits((double)line.Error) : null,
            [.. Assumptions(test, reading, converted, conversion, line), .. inUnit.Assumptions]));
    }

    private static IEnumerable<Assumption> Assumptions(SoilTest test, Reading reading, Reading converted, MethodConversion conversion, ConversionLine line)
    {
        var fit = line.RSquared is { } r2 ? Invariant($"r² {r2}") : "fit not printed";
        var error = Invariant($"{line.Error} {(line.Unit == ReportingUnit.PhUnits ? "pH units" : "%")}{(line.ErrorIsOurs ? " (our widening; the source prints none)" : "")}");
        var disagreement = conversion.Disagreement is { } other ? $" Others disagree: {other}" : "";
        yield return new Assumption(
            "method-conversion",
            $"{Words.Analytes.IdOf(reading.Analyte)} {reading.Amount} {Words.Units.IdOf(reading.Unit)} by {Name(reading.Analyte, reading.Method)} was turned into {converted.Amount} {Words.Units.IdOf(converted.Unit)} by {Name(reading.Analyte, converted.Method)}, as you asked. Soils: {conversion.SampleSet}. Holds for: {conversion.Validity}. {fit}; added error {error}.{disagreement} A measurement is better.",
            conversion.Source);
        if (conversion.HighestPh is not null && test.FreeLime is null && test.Of(Analyte.Ph) is null)
        {
            yield return new Assumption("conversion-lime-not-known", "Neither soil pH nor free lime was reported; the soil is taken as free of lime, or the conversion would not hold.", Citation.OurJudgement);
        }
    }

    private static string Name(Analyte analyte, Method method) => method.Extractant is { } extractant
        ? Words.Extractants.IdOf(extractant) + (method.Detection is { } detection ? $" ({Words.Detections.IdOf(detection)})" : "")
        : method.Procedure is { } procedure ? Words.ProceduresOf(analyte)!.IdOf(procedure) : "no stated method";
}
