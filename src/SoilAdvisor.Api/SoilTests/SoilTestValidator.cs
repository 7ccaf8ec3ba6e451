using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>A soil test that can be read.</summary>
internal sealed class SoilTestValidator : AbstractValidator<WrittenSoilTest>
{
    public SoilTestValidator()
    {
        RuleFor(t => t.Id).IsText("The soil test's id", "id-missing", "Give each soil test a name of your own, for example the block.");
        RuleFor(t => t.Sampled).IsOptionalDate("The day of sampling");
        RuleFor(t => t.Lab).IsOptionalText("The laboratory", Limits.TextLetters);
        RuleFor(t => t.Texture).IsOptionalText("The texture");
        RuleFor(t => t.SoilClass).IsOptionalText("The soil class", Limits.TextLetters);
        RuleFor(t => t.Depth).SetValidator(new DepthValidator()!);
        RuleFor(t => t.Cores).IsOptionalNumber("The number of cores").IsAboveZero("The number of cores").IsAtMost(1000, "The number of cores", "cores");
        RuleFor(t => t.Timing).IsOptionalText("The timing");
        RuleFor(t => t.BulkDensity).IsOptionalNumber("The bulk density").IsAboveZero("The bulk density").IsAtMost(2.65m, "The bulk density", "g/cm3");
        RuleFor(t => t.PoundsPerAcreFactor).IsOptionalNumber("The lb/acre factor").IsAboveZero("The lb/acre factor").IsAtMost(10, "The lb/acre factor", "lb/acre for one mg/kg");
        RuleFor(t => t.Readings)
            .HasSome("readings", "readings-missing", "Copy the lines of the laboratory report.")
            .HasAtMost(Limits.Readings, "readings in one soil test");
        RuleForEach(t => t.Readings).SetValidator(new ReadingValidator());
        RuleFor(t => t.LabRecommendations).HasAtMost(Limits.Readings, "recommendations in one soil test");
        RuleForEach(t => t.LabRecommendations).SetValidator(new LabRecommendationValidator());
    }
}
