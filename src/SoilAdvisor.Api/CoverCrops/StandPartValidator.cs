using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A part of a mixture that can be blended.</summary>
internal sealed class StandPartValidator : AbstractValidator<WrittenStandPart>
{
    public StandPartValidator()
    {
        RuleFor(p => p.CoverCrop).IsText("The cover crop", "cover-crop-missing", "Name it by its id; GET /v1/cover-crops lists them.");
        RuleFor(p => p.SharePercent).IsNumber("The share of the dry matter").IsAboveZero("The share of the dry matter").IsAtMost(100, "The share of the dry matter", "%");
        RuleFor(p => p.NitrogenPercent).IsNumber("Nitrogen in the dry matter").IsAboveZero("Nitrogen in the dry matter").IsAtMost(10, "Nitrogen in the dry matter", "%");
    }
}
