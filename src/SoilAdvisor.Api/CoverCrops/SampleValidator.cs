using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A cut with its mass and frame.</summary>
internal sealed class SampleValidator : AbstractValidator<WrittenSample>
{
    public SampleValidator()
    {
        RuleFor(s => s.Dried)
            .Must((s, dried) => dried is null != s.Fresh is null)
            .Else("sample-incomplete", "The sample needs its dry weight or its fresh weight, one of the two.", "Give dried, for example {\"value\": 120, \"unit\": \"g\"}; or fresh with dryMatterPercent.");
        RuleFor(s => s.DryMatterPercent)
            .Must((s, percent) => percent is null == s.Fresh is null)
            .Else("dry-matter-percent-missing", "A fresh weight and its dry matter percent belong together.", "Dry a weighed handful of the cut until it is crisp: dry weight over fresh weight times 100 is dryMatterPercent.");
        RuleFor(s => s.DryMatterPercent).IsOptionalNumber("The dry matter of the cut").IsAtLeast(1, "The dry matter of the cut", "%").IsAtMost(100, "The dry matter of the cut", "%");
        RuleFor(s => s.Fresh).SetValidator(new QuantityValidator("The fresh weight")!);
        RuleFor(s => s.Dried).SetValidator(new QuantityValidator("The dried mass")!);
        RuleFor(s => s.Frame).NotNull().Else("sample-incomplete", "The sample has no frame.", "Give frame, for example {\"value\": 4, \"unit\": \"sq ft\"}.");
        RuleFor(s => s.Frame).SetValidator(new QuantityValidator("The frame")!);
    }
}
