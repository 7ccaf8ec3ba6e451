using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A printed recommendation with what, how much and in which unit.</summary>
internal sealed class LabRecommendationValidator : AbstractValidator<WrittenLabRecommendation>
{
    public LabRecommendationValidator()
    {
        RuleFor(r => r.What).IsText("What the laboratory recommends", "recommendation-missing", "Say what it is for, for example lime.");
        RuleFor(r => r.Value).IsNumber("The recommended rate").IsNotNegative("The recommended rate");
        RuleFor(r => r.Unit).IsText("The unit of the recommended rate", "unit-missing", "Copy it from the report, for example ton/acre.");
        RuleFor(r => r.Basis).IsOptionalText("The basis");
        RuleFor(r => r.Depth).SetValidator(new DepthValidator()!);
    }
}
