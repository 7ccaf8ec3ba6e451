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
        RuleFor(r => r.Methods).HasAtMost(Limits.PerBed, "lime methods");
        RuleForEach(r => r.Methods)
            .Must(IsName).Else("lime-method-missing", (_, m) => $"\"{Rules.Clip(m)}\" is not the name of a lime method.", "Name a lime method, or write all; GET /v1/lime-methods lists them.");
        RuleFor(r => r.Crops).HasAtMost(Limits.PerBed, "crops");
        RuleForEach(r => r.Crops)
            .Must(IsName).Else("crop-missing", (_, c) => $"\"{Rules.Clip(c)}\" is not the name of a crop.", "Name the crop by its id; GET /v1/crops lists them.");
        RuleFor(r => r.Crops)
            .Must((r, crops) => crops is null || r.Crop is null)
            .Else("crop-twice", "There is both a crop and a list of crops.", "Give crop, or crops in the order of the bed.");
        RuleFor(r => r.Incorporation)
            .Must(i => i is null or "worked-in" or "surface")
            .Else("unknown-incorporation", (_, i) => $"\"{Rules.Clip(i)}\" is not a way to spread lime.", "Use worked-in or surface.");
        RuleFor(r => r.Date).IsOptionalDate("The day of the first spreading");
        RuleFor(r => r.SoilTest).NotNull().Else("soil-test-missing", "There is no soilTest.", "Send the soil test with its pH and buffer pH.");
        RuleFor(r => r.SoilTest).SetValidator(new SoilTestValidator()!);
        RuleFor(r => r.TargetPh).IsOptionalNumber("The target pH");
        RuleFor(r => r.TargetPh)
            .Must((r, target) => target is not null || !string.IsNullOrWhiteSpace(r.Crop) || r.Crops is { Count: > 0 })
            .Else("target-missing", "There is neither a target pH nor a crop.", "Give targetPh, or the crop whose target is wanted.");
        RuleFor(r => r.Depth).SetValidator(new QuantityValidator("The depth")!);
        RuleFor(r => r.Area).SetValidator(new QuantityValidator("The area")!);
        RuleFor(r => r.RecentLime!.Date)
            .Must(d => Dates.Read(d) is not null)
            .Else("date-form", (_, d) => d is null ? "The day of the last liming is missing." : $"The day of the last liming is \"{Rules.Clip(d)}\", which is not a date in the form year-month-day.", "Write it like 2026-03-31, in the years 1900 to 2199.")
            .When(r => r.RecentLime is not null);
        RuleFor(r => r.RecentLime!.Material).IsOptionalText("The material of the last liming").When(r => r.RecentLime is not null);
        RuleFor(r => r.RecentLime!.Amount).SetValidator(new QuantityValidator("The amount of the last liming")!).When(r => r.RecentLime is not null);
        RuleFor(r => r.Materials).HasAtMost(Limits.Materials, "materials");
        RuleForEach(r => r.Materials).SetValidator(new MaterialValidator());
    }

    private static bool IsName(string? text) => !string.IsNullOrWhiteSpace(text) && text.Length <= Limits.IdLetters;
}
