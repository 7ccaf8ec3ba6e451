using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Beds;

/// <summary>A time with two ends in order, at most two years.</summary>
internal sealed class GapValidator : AbstractValidator<WrittenGap>
{
    private const int MostDays = 731;

    public GapValidator()
    {
        RuleFor(g => g.From).Must(d => Dates.Read(d) is not null).Else("date-form", (_, d) => $"The first free day is \"{Rules.Clip(d)}\", which is not a date in the form year-month-day.", "Write it like 2026-07-01, in the years 1900 to 2199.");
        RuleFor(g => g.To).Must(d => Dates.Read(d) is not null).Else("date-form", (_, d) => $"The last free day is \"{Rules.Clip(d)}\", which is not a date in the form year-month-day.", "Write it like 2026-09-15, in the years 1900 to 2199.");
        RuleFor(g => g.To)
            .Must((g, to) => PlantingValidator.InOrder(g.From, to))
            .Else("date-order", (g, to) => $"The time ends on {to}, before it begins on {g.From}.", "Correct one of the two dates.");
        RuleFor(g => g.To)
            .Must((g, to) => Dates.Read(g.From) is not { } a || Dates.Read(to) is not { } b || b.DayNumber - a.DayNumber <= MostDays)
            .Else("gap-too-long", (g, to) => $"The time from {g.From} to {to} is longer than two years.", "Give the time between two crops.");
    }
}
