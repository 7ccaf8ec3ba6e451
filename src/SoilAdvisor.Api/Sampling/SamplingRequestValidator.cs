using FluentValidation;
using SoilAdvisor.Agronomy.Sampling;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Sampling;

/// <summary>A sampling request of which some part can be answered.</summary>
internal sealed class SamplingRequestValidator : AbstractValidator<SamplingRequest>
{
    private const int MostCores = 1000;
    private const int TestsOfOneBlock = 2;

    public SamplingRequestValidator()
    {
        RuleFor(r => r.Analyte).IsOptionalText("The analyte");
        RuleFor(r => r.Extractant).IsOptionalText("The extractant");
        RuleFor(r => r.Cv).IsOptionalNumber("The coefficient of variation").IsAboveZero("The coefficient of variation").IsAtMost(500, "The coefficient of variation", "%");
        RuleFor(r => r.Cv)
            .Must((r, cv) => cv is not null || r.Analyte is not null || (r.Precision is null && r.Cores is null))
            .Else("field-variation-missing", "Neither an analyte nor a coefficient of variation is given.", "Name the analyte (its published field variation is then used), or give cv in %.");
        RuleFor(r => r.Precision).IsOptionalNumber("The wanted precision").IsAtMost(100, "The wanted precision", "%")
            .Must(p => p?.Number is not < 1)
            .Else("precision-too-fine", (_, p) => $"The wanted precision is {p?.Shown} %; below 1 % no sampling of a field comes.", "Ask for 1 % or more; 10 to 25 % is usual.");
        RuleFor(r => r.Confidence).IsOptionalNumber("The confidence")
            .Must(c => c?.Number is not (< Confidence.LowestPercent or > Confidence.HighestPercent))
            .Else("confidence-out-of-range", (_, c) => $"The confidence is {c?.Shown} %; it must lie from 50 to 99.9 %.", "Use for example 80, 90 or 95.");
        RuleFor(r => r.Cores).IsOptionalNumber("The number of cores").IsAboveZero("The number of cores").IsAtMost(MostCores, "The number of cores", "cores")
            .Must(c => c?.Number is not { } number || number == Math.Floor(number))
            .Else("not-a-whole-number", (_, c) => $"The number of cores is {c?.Shown}; cores are whole.", "Give a whole number.");
        RuleFor(r => r.Tests)
            .Must(tests => tests is null || tests.Count == TestsOfOneBlock)
            .Else("two-tests-needed", (_, tests) => string.Create(CultureInfo.InvariantCulture, $"There are {tests?.Count} soil tests; two of one block are compared."), "Give two soil tests, the earlier first.");
        RuleForEach(r => r.Tests).SetValidator(new SoilTestValidator());
        RuleFor(r => r.Beds).HasAtMost(Limits.SampledBeds, "beds to be sampled");
        RuleForEach(r => r.Beds).SetValidator(new SampledBedValidator());
        RuleFor(r => r.Beds)
            .Must(beds => beds is null || beds.Select(b => b?.Id?.Trim()).OfType<string>().GroupBy(id => id, StringComparer.Ordinal).All(g => g.Count() == 1))
            .Else("duplicate-bed", "Two beds have the same id.", "Give each bed an id of its own.");
        RuleFor(r => r)
            .Must(r => r.Precision is not null || r.Cores is not null || r.Tests is not null || r.Beds is { Count: > 0 })
            .Else("nothing-asked", "Nothing is asked for.", "Give precision (how many cores), cores (how near they come), two tests (a real change?) or beds (which share a composite).");
    }
}
