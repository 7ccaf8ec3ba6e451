using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>Figures that are percents.</summary>
internal sealed class AnalysisValidator : AbstractValidator<WrittenAnalysis>
{
    public AnalysisValidator()
    {
        RuleFor(a => a.N).IsOptionalNumber("Nitrogen").IsNotNegative("Nitrogen").IsAtMost(100, "Nitrogen", "%");
        RuleFor(a => a.P2O5).IsOptionalNumber("Phosphate (P2O5)").IsNotNegative("Phosphate (P2O5)").IsAtMost(100, "Phosphate (P2O5)", "%");
        RuleFor(a => a.K2O).IsOptionalNumber("Potash (K2O)").IsNotNegative("Potash (K2O)").IsAtMost(100, "Potash (K2O)", "%");
        RuleFor(a => a.Moisture).IsOptionalNumber("Moisture").IsNotNegative("Moisture").IsAtMost(100, "Moisture", "%");
        RuleFor(a => a.Basis)
            .Must(b => b is null or "as-spread" or "dry")
            .Else("unknown-basis", (_, b) => $"\"{Rules.Clip(b)}\" is not a basis of an analysis.", "Use as-spread or dry.");
    }
}
