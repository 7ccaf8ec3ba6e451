using FluentValidation;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A metal that rules limit, in dry matter.</summary>
internal sealed class MetalValidator : AbstractValidator<WrittenMetal>
{
    public MetalValidator()
    {
        RuleFor(m => m.Metal)
            .Must(m => m is not null && Enum.GetNames<Metal>().Contains(m, StringComparer.Ordinal))
            .Else("unknown-metal", (_, m) => m is null ? "A metal has no name." : $"\"{Rules.Clip(m)}\" is not a metal that rules limit.", $"Use one of: {string.Join(", ", Enum.GetNames<Metal>())}.");
        RuleFor(m => m.Value).IsNumber("The metal").IsNotNegative("The metal").IsAtMost(1_000_000, "The metal", "mg/kg");
        RuleFor(m => m.Unit)
            .Must(u => u is "mg/kg" or "ppm")
            .Else("metal-unit", (_, u) => u is null ? "The metal has no unit." : $"\"{Rules.Clip(u)}\" is not a unit of a metal.", "Use mg/kg, of dry matter, as laboratories report it.");
    }
}
