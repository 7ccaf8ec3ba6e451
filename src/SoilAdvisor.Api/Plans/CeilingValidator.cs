using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Plans;

/// <summary>A ceiling that can be kept. Zero is a ceiling: none of it.</summary>
internal sealed class CeilingValidator : AbstractValidator<WrittenCeiling>
{
    public CeilingValidator()
    {
        RuleFor(c => c.Nutrient).IsText("The nutrient of the ceiling", "nutrient-missing", "Name the nutrient, for example total P2O5.");
        RuleFor(c => c.Value).IsNumber("The ceiling").IsNotNegative("The ceiling").IsAtMost(1_000_000, "The ceiling", "in any unit");
        RuleFor(c => c.Unit).IsText("The unit of the ceiling", "unit-missing", "Write the unit beside the value, for example lb/acre.");
        RuleFor(c => c.Reason).IsOptionalText("The reason of the ceiling", Limits.TextLetters);
    }
}
