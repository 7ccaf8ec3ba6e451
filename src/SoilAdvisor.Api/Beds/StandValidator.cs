using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Beds;

/// <summary>A former stand: a crop or a cover crop, not both.</summary>
internal sealed class StandValidator : AbstractValidator<WrittenStand>
{
    public StandValidator()
    {
        RuleFor(s => s.Crop)
            .Must((s, crop) => crop is null != s.CoverCrop is null)
            .Else("stand-missing", "A former stand names either a crop or a cover crop.", "Give crop or coverCrop.");
        RuleFor(s => s.Crop).IsOptionalText("The crop");
        RuleFor(s => s.CoverCrop).IsOptionalText("The cover crop");
        RuleFor(s => s.DryMatter).SetValidator(new QuantityValidator("The dry matter")!);
        RuleFor(s => s.NitrogenPercent).IsOptionalNumber("Nitrogen in the dry matter").IsAboveZero("Nitrogen in the dry matter").IsAtMost(10, "Nitrogen in the dry matter", "%");
        RuleFor(s => s.Stage).IsOptionalText("The stage", Limits.TextLetters);
        RuleFor(s => s.Killed).IsOptionalDate("The day it was killed");
    }
}
