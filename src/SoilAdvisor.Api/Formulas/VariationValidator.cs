using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Formulas;

/// <summary>A symbol with both ends and a number of steps.</summary>
internal sealed class VariationValidator : AbstractValidator<WrittenVariation>
{
    public VariationValidator()
    {
        RuleFor(v => v.Symbol).IsText("The symbol to vary", "vary-symbol-missing", "Name one of the formula's symbols.");
        RuleFor(v => v.From).IsNumber("The first number");
        RuleFor(v => v.To).IsNumber("The last number");
        RuleFor(v => v.Steps).IsOptionalNumber("The number of steps").IsWhole("The number of steps")
            .IsAtLeast(2, "The number of steps", "steps").IsAtMost(Limits.Variations, "The number of steps", "steps");
    }
}
