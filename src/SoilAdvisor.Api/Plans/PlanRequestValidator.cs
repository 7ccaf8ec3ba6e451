using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Plans;

/// <summary>A plan request that can be answered.</summary>
internal sealed class PlanRequestValidator : AbstractValidator<PlanRequest>
{
    public PlanRequestValidator()
    {
        RuleFor(r => r.Farm).IsOptionalText("The farm's name", Limits.TextLetters);
        RuleFor(r => r.Guide).IsOptionalText("The guide");
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.Subregion).IsOptionalText("The subregion");
        RuleFor(r => r.SoilTests)
            .HasSome("soilTests", "soil-test-missing", "Send at least one soil test.")
            .HasAtMost(Limits.SoilTests, "soil tests");
        RuleForEach(r => r.SoilTests).SetValidator(new SoilTestValidator());
        RuleFor(r => r.Beds)
            .HasSome("beds", "no-beds", "Give at least one bed with its size, soil test and crops.")
            .HasAtMost(Limits.Beds, "beds");
        RuleForEach(r => r.Beds).SetValidator(new BedValidator());
        RuleFor(r => r.Materials).HasAtMost(Limits.Materials, "materials");
        RuleForEach(r => r.Materials).SetValidator(new MaterialValidator());
        RuleFor(r => r.Options).SetValidator(new PlanOptionsValidator()!);
    }
}
