using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A layer that can be: two depths in one unit, the second below the first.</summary>
internal sealed class DepthValidator : AbstractValidator<WrittenDepth>
{
    public DepthValidator()
    {
        RuleFor(d => d.From).IsNumber("The top of the layer").IsNotNegative("The top of the layer");
        RuleFor(d => d.To).IsNumber("The bottom of the layer").IsAboveZero("The bottom of the layer").IsAtMost(300, "The bottom of the layer", "in or cm");
        RuleFor(d => d.To)
            .Must((d, to) => to?.Number is not { } bottom || d.From?.Number is not { } top || bottom > top)
            .Else("depth-order", (d, to) => $"The layer runs from {d.From?.Shown} to {to?.Shown}.", "Give the shallower depth first.");
        RuleFor(d => d.Unit)
            .Must(u => u is "in" or "cm")
            .Else("unknown-unit", (_, u) => u is null ? "The depth has no unit." : $"\"{Rules.Clip(u)}\" is not a known unit of depth.", "Use in or cm.");
    }
}
