using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Checks;

/// <summary>A check that can be made.</summary>
internal sealed class CheckRequestValidator : AbstractValidator<CheckRequest>
{
    public CheckRequestValidator()
    {
        RuleFor(r => r.Standard).IsOptionalText("The standard", Limits.TextLetters);
        RuleFor(r => r.Guide).IsOptionalText("The guide");
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.Date).IsOptionalDate("The day of the check");
        RuleFor(r => r.SoilTest).SetValidator(new SoilTestValidator()!);
        RuleFor(r => r.Bed)
            .Must((r, bed) => bed is not null || r.Materials is { Count: > 0 })
            .Else("nothing-to-check", "There is neither a bed nor a list of materials.", "Give the bed with its crops and what was applied, or the materials on the shelf.");
        RuleFor(r => r.Bed).SetValidator(new BedValidator()!);
        RuleFor(r => r.Materials).HasAtMost(Limits.Materials, "materials");
        RuleForEach(r => r.Materials).SetValidator(new MaterialValidator());
    }
}
