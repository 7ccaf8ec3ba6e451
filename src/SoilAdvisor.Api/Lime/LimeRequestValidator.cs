using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Lime;

/// <summary>A lime request that can be answered.</summary>
internal sealed class LimeRequestValidator : AbstractValidator<LimeRequest>
{
    public LimeRequestValidator()
    {
        RuleFor(r => r.Method).IsOptionalText("The lime method");
        RuleFor(r => r.Guide).IsOptionalText("The guide");
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.Crop).IsOptionalText("The crop");
        RuleFor(r => r.SoilTest).NotNull().Else("soil-test-missing", "There is no soilTest.", "Send the soil test with its pH and buffer pH.");
        RuleFor(r => r.SoilTest).SetValidator(new SoilTestValidator()!);
        RuleFor(r => r.TargetPh).IsOptionalNumber("The target pH");
        RuleFor(r => r.TargetPh)
            .Must((r, target) => target is not null || !string.IsNullOrWhiteSpace(r.Crop))
            .Else("target-missing", "There is neither a target pH nor a crop.", "Give targetPh, or the crop whose target is wanted.");
        RuleFor(r => r.Depth).SetValidator(new QuantityValidator("The depth")!);
        RuleFor(r => r.Area).SetValidator(new QuantityValidator("The area")!);
        RuleFor(r => r.RecentLime!.Date)
            .Must(d => Dates.Read(d) is not null)
            .Else("date-form", (_, d) => d is null ? "The day of the last liming is missing." : $"The day of the last liming is \"{Rules.Clip(d)}\", which is not a date in the form year-month-day.", "Write it like 2026-03-31, in the years 1900 to 2199.")
            .When(r => r.RecentLime is not null);
        RuleFor(r => r.Materials).HasAtMost(Limits.Materials, "materials");
        RuleForEach(r => r.Materials).SetValidator(new MaterialValidator());
    }
}
