using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A conductivity with its extract.</summary>
internal sealed class SaltValidator : AbstractValidator<WrittenSalt>
{
    public SaltValidator()
    {
        RuleFor(s => s.Value).IsNumber("The conductivity").IsNotNegative("The conductivity").IsAtMost(200, "The conductivity", "dS/m");
        RuleFor(s => s.Unit)
            .Must(u => u is "dS/m" or "mmho/cm" or "mS/cm")
            .Else("salt-unit", (_, u) => u is null ? "The conductivity has no unit." : $"\"{Rules.Clip(u)}\" is not a unit of conductivity.", "Use dS/m; mmho/cm and mS/cm are the same number.");
        RuleFor(s => s.Extract)
            .Must(e => e is "saturated-paste" or "1:2" or "1:5")
            .Else("salt-extract", (_, e) => e is null ? "The conductivity does not say in which extract it was read." : $"\"{Rules.Clip(e)}\" is not a known extract.", "Use saturated-paste, 1:2 or 1:5 (material to water); the report names it. Without it the number means nothing.");
    }
}
