using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A nitrogen request that can be answered.</summary>
internal sealed class NitrogenRequestValidator : AbstractValidator<NitrogenRequest>
{
    private const int Samples = 50;

    public NitrogenRequestValidator()
    {
        RuleFor(r => r.CoverCrop)
            .Must((r, crop) => crop is null != r.Mixture is null)
            .Else("stand-missing", "Name either a cover crop or a mixture.", "Give coverCrop, or mixture with the ids of its species.");
        RuleFor(r => r.CoverCrop).IsOptionalText("The cover crop");
        RuleFor(r => r.Mixture).HasAtMost(Limits.PerBed, "species");
        RuleFor(r => r.DryMatter)
            .Must((r, matter) => matter is null != r.Samples is not { Count: > 0 })
            .Else("dry-matter-missing", "Give either the dry matter or the samples it was cut from.", "Give dryMatter in lb/acre, or samples with dried mass and frame.");
        RuleFor(r => r.DryMatter).SetValidator(new QuantityValidator("The dry matter")!);
        RuleFor(r => r.Samples).HasAtMost(Samples, "samples");
        RuleForEach(r => r.Samples).SetValidator(new SampleValidator());
        RuleFor(r => r.NitrogenPercent).IsOptionalNumber("Nitrogen in the dry matter").IsAboveZero("Nitrogen in the dry matter").IsAtMost(10, "Nitrogen in the dry matter", "%");
        RuleFor(r => r.Stage).IsOptionalText("The stage", Limits.TextLetters);
    }
}
