using FluentValidation;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;

namespace SoilAdvisor.Api.Beds;

/// <summary>A spreading with material, amount and day.</summary>
internal sealed class AppliedValidator : AbstractValidator<WrittenApplied>
{
    public AppliedValidator()
    {
        RuleFor(a => a.Material).IsText("The material that was spread", "material-missing", "Name the nearest material of GET /v1/materials; give its own analysis beside it.");
        RuleFor(a => a.Analysis).SetValidator(new AnalysisValidator()!);
        RuleFor(a => a.Amount).NotNull().Else("amount-missing", "The amount that was spread is missing.", "Give the mass on the whole bed, for example {\"value\": 20, \"unit\": \"lb\"}.");
        RuleFor(a => a.Amount).SetValidator(new QuantityValidator("The amount that was spread")!);
        RuleFor(a => a.Date)
            .Must(d => Dates.Read(d) is not null)
            .Else("date-form", (_, d) => d is null ? "The day of spreading is missing." : $"The day of spreading is \"{Rules.Clip(d)}\", which is not a date in the form year-month-day.", "Write it like 2026-03-31, in the years 1900 to 2199.");
        RuleFor(a => a.Incorporated).IsOptionalDate("The day it was worked in");
        RuleFor(a => a.Incorporated)
            .Must((a, day) => PlantingValidator.InOrder(a.Date, day))
            .Else("date-order", (a, day) => $"It was worked in on {day}, before it was spread on {a.Date}.", "Correct one of the two dates.");
    }
}
