using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Sampling;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Sampling;

/// <summary>POST /v1/sampling: cores, precision, real changes, pooling and composites.</summary>
internal static class SamplingEndpoints
{
    public static void MapSampling(this IEndpointRouteBuilder routes) => routes
        .MapCalculation<SamplingRequest, SamplingAnswer>("/v1/sampling", Answer)
        .WithTags("Sampling").WithName("PlanSampling").WithSummary("How many cores, which beds share a composite, and whether two soil tests differ in truth");

    private static SamplingAnswer? Answer(SamplingRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var analyte = ReadWord(request.Analyte, Words.Analytes, "/analyte", faults);
        var extractant = ReadWord(request.Extractant, Words.Extractants, "/extractant", faults);
        if (faults.AnyWithin("/confidence") || faults.AnyWithin("/analyte") || faults.AnyWithin("/extractant"))
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        var confidence = ReadConfidence(request, calculation);
        var field = ReadField(request, analyte, extractant, calculation);
        var cores = CoresFor(request, field, confidence, sheet, calculation);
        var precision = PrecisionOf(request, field, confidence, sheet, calculation);
        var (changes, pooled) = TestComparison.Of(request, analyte, confidence, sheet, calculation);
        var composites = CompositesOf(request, calculation);
        if (cores is null && precision is null && changes is null && pooled is null && composites is null)
        {
            return null;
        }

        return new SamplingAnswer(
            cores,
            precision,
            changes,
            pooled,
            composites,
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    private static Confidence ReadConfidence(SamplingRequest request, Calculation calculation)
    {
        if (request.Confidence?.Number is { } percent)
        {
            return Confidence.FromPercent((double)percent);
        }

        if (request.Precision is not null || request.Cores is not null || request.Tests is not null)
        {
            calculation.Assume([new Assumption("confidence-taken", $"No confidence was given: {Confidence.Usual} is taken.", Citation.OurJudgement)]);
        }

        return Confidence.Usual;
    }

    private static FieldSpread? ReadField(SamplingRequest request, Analyte? analyte, Extractant? extractant, Calculation calculation)
    {
        if ((request.Precision is null && request.Cores is null) || calculation.Faults.AnyWithin("/cv"))
        {
            return null;
        }

        if (request.Cv?.Number is { } percent)
        {
            return Agronomy.Sampling.Cores.GivenSpread(CoefficientOfVariation.FromPercent((double)percent));
        }

        if (Agronomy.Sampling.Cores.PublishedSpread(calculation.Tables.Variability, analyte!.Value, extractant).TryGet(out var field, out var reason))
        {
            calculation.Assume(field.Assumptions);
            return field;
        }

        calculation.Faults.Add("/cv", reason);
        return null;
    }

    private static CoreCountAnswer? CoresFor(SamplingRequest request, FieldSpread? field, Confidence confidence, WorkingSheet? sheet, Calculation calculation)
    {
        if (field is null || request.Precision?.Number is not { } wanted || calculation.Faults.AnyWithin("/precision"))
        {
            return null;
        }

        sheet?.Section("Cores for a wanted precision");
        var count = Agronomy.Sampling.Cores.For(field, Precision.FromPercent((double)wanted), confidence, sheet);
        return new CoreCountAnswer(
            request.Analyte?.Trim(),
            count.Cores,
            count.IfSpreadIsKnown,
            Percent(count.Wanted.Percent),
            Percent(confidence.Percent),
            Percent(count.Field.Percent),
            string.Create(CultureInfo.InvariantCulture, $"Mix {count.Cores} cores: then {Subject(request)} comes within {count.Wanted} of the block's mean, at {confidence}. Where the variation is known from many cores, {count.IfSpreadIsKnown} are enough."),
            calculation.Cite(SamplingFormulas.CoresForPrecisionByStudent.Source));
    }

    private static CorePrecisionAnswer? PrecisionOf(SamplingRequest request, FieldSpread? field, Confidence confidence, WorkingSheet? sheet, Calculation calculation)
    {
        if (field is null || request.Cores?.Number is not { } cores || calculation.Faults.AnyWithin("/cores"))
        {
            return null;
        }

        sheet?.Section("Precision of the cores");
        var reached = Agronomy.Sampling.Cores.Reached(field, (int)cores, confidence, sheet);
        return new CorePrecisionAnswer(
            request.Analyte?.Trim(),
            reached.Cores,
            Percent(reached.Reached.Percent),
            Percent(confidence.Percent),
            Percent(reached.Field.Percent),
            string.Create(CultureInfo.InvariantCulture, $"With {reached.Cores} {(reached.Cores == 1 ? "core" : "cores")} {Subject(request)} comes within {reached.Reached} of the block's mean, at {confidence}."),
            calculation.Cite(SamplingFormulas.PrecisionOfCores.Source));
    }

    private static CompositesAnswer? CompositesOf(SamplingRequest request, Calculation calculation)
    {
        if (request.Beds is not { Count: > 0 } beds || calculation.Faults.AnyWithin("/beds"))
        {
            return null;
        }

        var plan = Composites.For([.. beds.Select(b => new SampledBed(
            b.Id!.Trim(), string.IsNullOrWhiteSpace(b.Soil) ? null : b.Soil, b.CropHistory, b.Amendments, b.Site is null ? null : b.Site == SampledBedValidator.Sites[1] ? GrowingSite.HighTunnel : GrowingSite.Field))]);
        calculation.Assume(plan.Assumptions);
        return new CompositesAnswer(plan.Composites, [.. plan.Apart.Select(a => new BedsApartAnswer(a.First, a.Second, a.Reasons))], calculation.Cite(Citation.CommonPractice));
    }

    private static string Subject(SamplingRequest request) => request.Analyte?.Trim() ?? "the sample";

    private static Quantity Percent(double value) => new(Units.Rounded(value), "%");

    private static T? ReadWord<T>(string? word, Vocabulary<T> vocabulary, string pointer, FaultList faults)
        where T : struct, Enum
    {
        if (word is null || faults.AnyWithin(pointer))
        {
            return null;
        }

        if (vocabulary.Read(word).TryGet(out var value, out var reason))
        {
            return value;
        }

        faults.Add(pointer, reason);
        return null;
    }
}
