using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>Figures that are percents.</summary>
internal sealed class AnalysisValidator : AbstractValidator<WrittenAnalysis>
{
    public AnalysisValidator()
    {
        RuleFor(a => a.N).IsOptionalNumber("Nitrogen").IsNotNegative("Nitrogen").IsAtMost(100, "Nitrogen", "%");
        RuleFor(a => a.AmmoniumN).IsOptionalNumber("Ammonium nitrogen").IsNotNegative("Ammonium nitrogen").IsAtMost(100, "Ammonium nitrogen", "%");
        RuleFor(a => a.NitrateN).IsOptionalNumber("Nitrate nitrogen").IsNotNegative("Nitrate nitrogen").IsAtMost(100, "Nitrate nitrogen", "%");
        RuleFor(a => a.P2O5).IsOptionalNumber("Phosphate (P2O5)").IsNotNegative("Phosphate (P2O5)").IsAtMost(100, "Phosphate (P2O5)", "%");
        RuleFor(a => a.K2O).IsOptionalNumber("Potash (K2O)").IsNotNegative("Potash (K2O)").IsAtMost(100, "Potash (K2O)", "%");
        RuleFor(a => a.Moisture).IsOptionalNumber("Moisture").IsNotNegative("Moisture").IsAtMost(100, "Moisture", "%");
        RuleFor(a => a.NeutralisingValue).IsOptionalNumber("The neutralising value").IsAtLeast(1, "The neutralising value", "%").IsAtMost(200, "The neutralising value", "%");
        RuleFor(a => a.Calcium).IsOptionalNumber("Calcium").IsNotNegative("Calcium").IsAtMost(100, "Calcium", "%");
        RuleFor(a => a.Magnesium).IsOptionalNumber("Magnesium").IsNotNegative("Magnesium").IsAtMost(100, "Magnesium", "%");
        RuleFor(a => a.Phosphorus).IsOptionalNumber("Phosphorus (element)").IsNotNegative("Phosphorus (element)").IsAtMost(43, "Phosphorus (element)", "%");
        RuleFor(a => a.Potassium).IsOptionalNumber("Potassium (element)").IsNotNegative("Potassium (element)").IsAtMost(83, "Potassium (element)", "%");
        RuleFor(a => a.Sulfur).IsOptionalNumber("Sulfur").IsNotNegative("Sulfur").IsAtMost(100, "Sulfur", "%");
        RuleFor(a => a.Sodium).IsOptionalNumber("Sodium").IsNotNegative("Sodium").IsAtMost(100, "Sodium", "%");
        RuleFor(a => a.Carbon).IsOptionalNumber("Carbon").IsNotNegative("Carbon").IsAtMost(100, "Carbon", "%");
        RuleFor(a => a.CarbonToNitrogen).IsOptionalNumber("The carbon to nitrogen ratio").IsAboveZero("The carbon to nitrogen ratio").IsAtMost(2000, "The carbon to nitrogen ratio", "to 1");
        RuleFor(a => a.Metals).HasAtMost(Limits.PerBed, "metals");
        RuleForEach(a => a.Metals).SetValidator(new MetalValidator());
        RuleFor(a => a.Salt).SetValidator(new SaltValidator()!);
        RuleFor(a => a.From).IsOptionalText("The laboratory of the analysis", Limits.TextLetters);
        RuleFor(a => a.Date).IsOptionalDate("The date of the analysis");
        RuleFor(a => a.Sieves).HasAtMost(Limits.PerBed, "sieves");
        RuleForEach(a => a.Sieves).SetValidator(new SieveValidator());
        RuleFor(a => a.SieveClasses).HasAtMost(Limits.PerBed, "size classes");
        RuleForEach(a => a.SieveClasses).SetValidator(new SieveClassValidator());
        RuleFor(a => a.EffectiveValue).SetValidator(new ScoreValidator()!);
        RuleFor(a => a.Basis)
            .Must(b => b is null or "as-spread" or "dry")
            .Else("unknown-basis", (_, b) => $"\"{Rules.Clip(b)}\" is not a basis of an analysis.", "Use as-spread or dry.");
    }
}
