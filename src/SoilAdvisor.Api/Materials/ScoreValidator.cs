using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>An effective value with the index that it counts by.</summary>
internal sealed class ScoreValidator : AbstractValidator<WrittenScore>
{
    public ScoreValidator()
    {
        RuleFor(s => s.Index).IsText("The index", "lime-index-missing", "Name the index that the label counts by, for example ohio-enp.");
        RuleFor(s => s.Value).IsNumber("The effective value").IsAboveZero("The effective value").IsAtMost(4000, "The effective value", "lb/ton or %");
    }
}
