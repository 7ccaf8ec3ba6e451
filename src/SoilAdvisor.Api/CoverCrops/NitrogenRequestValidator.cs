using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A nitrogen request that can be answered.</summary>
internal sealed class NitrogenRequestValidator : AbstractValidator<NitrogenRequest>
{
    public NitrogenRequestValidator()
    {
        RuleFor(r => r.CoverCrop)
            .Must((r, crop) => new[] { crop is not null, r.Mixture is not null, r.Parts is not null }.Count(given => given) == 1)
            .Else("stand-missing", "Name either a cover crop or a mixture.", "Give coverCrop; or mixture with the ids of its species; or parts with their shares and nitrogen.");
        RuleFor(r => r.CoverCrop).IsOptionalText("The cover crop");
        RuleFor(r => r.Mixture).HasAtMost(Limits.PerBed, "species");
        RuleFor(r => r.Parts).HasAtMost(Limits.PerBed, "parts");
        RuleForEach(r => r.Parts).SetValidator(new StandPartValidator());
        RuleFor(r => r.Parts)
            .Must(parts => parts is not { Count: > 0 } || Math.Abs(parts.Sum(p => p.SharePercent?.Number ?? 0) - 100) <= 0.5m)
            .Else("parts-sum", "The shares of the dry matter do not add up to 100 %.", "Weigh the dried species apart and give each its share of the whole.");
        RuleFor(r => r.NitrogenPercent)
            .Must((r, percent) => percent is null || r.Parts is null)
            .Else("nitrogen-twice", "The nitrogen is given for the whole and for its parts.", "Leave one of the two out: a measurement of the whole says more.");
        RuleFor(r => r.DryMatter)
            .Must((r, matter) => StandValidator.MeasuredOnce(matter, r.Samples, r.Height))
            .Else("dry-matter-missing", "Give either the dry matter, or the samples it was cut from, or the height.", "Give dryMatter in lb/acre, or samples with weight and frame, or height of a single species.");
        RuleFor(r => r.Height)
            .Must((r, height) => height is null || r.CoverCrop is not null)
            .Else("height-of-mixture", "The rule of thumb for height holds for one species, not for a mixture.", "Cut, dry and weigh samples, and give them as samples.");
        RuleFor(r => r.Height).SetValidator(new QuantityValidator("The height")!);
        RuleFor(r => r.CoverPercent).IsOptionalNumber("The ground covered").IsAboveZero("The ground covered").IsAtMost(100, "The ground covered", "%");
        RuleFor(r => r.DryMatter).SetValidator(new QuantityValidator("The dry matter")!);
        RuleFor(r => r.Samples).HasAtMost(StandValidator.MostSamples, "samples");
        RuleForEach(r => r.Samples).SetValidator(new SampleValidator());
        RuleFor(r => r.NitrogenPercent).IsOptionalNumber("Nitrogen in the dry matter").IsAboveZero("Nitrogen in the dry matter").IsAtMost(10, "Nitrogen in the dry matter", "%");
        RuleFor(r => r.Stage).IsOptionalText("The stage", Limits.TextLetters);
    }
}
