using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A largest rate that can be kept.</summary>
internal sealed class CapValidator : AbstractValidator<WrittenCap>
{
    public CapValidator()
    {
        RuleFor(c => c.Value).IsNumber("The largest rate").IsAboveZero("The largest rate").IsAtMost(10_000_000, "The largest rate", "in any unit");
        RuleFor(c => c.Unit).IsText("The unit of the largest rate", "unit-missing", "Write the unit beside the value, for example lb/acre.");
        RuleFor(c => c.Reason).IsOptionalText("The reason of the largest rate", Limits.TextLetters);
    }
}
