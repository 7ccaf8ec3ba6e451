using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Climate;

/// <summary>Daily temperatures that belong together: as many lows as highs, at most two years.</summary>
internal sealed class DaysValidator : AbstractValidator<WrittenDays>
{
    private const int MostDays = 731;

    public DaysValidator()
    {
        RuleFor(d => d.From).Must(t => Dates.Read(t) is not null).Else("date-form", (_, t) => $"The first day is \"{Rules.Clip(t)}\", which is not a date in the form year-month-day.", "Write it like 2026-07-01, in the years 1900 to 2199.");
        RuleFor(d => d.Unit).Must(ClimateWords.IsUnit).Else("temperature-unit", (_, u) => $"The unit of the temperatures is \"{Rules.Clip(u)}\".", "Write F or C.");
        RuleFor(d => d.Lows).HasSome("lows", "daily-temperatures", "Give lows and highs, one a day.").HasAtMost(MostDays, "days");
        RuleFor(d => d.Highs)
            .Must((d, highs) => highs?.Count == d.Lows?.Count)
            .Else("daily-temperatures", (d, highs) => string.Create(CultureInfo.InvariantCulture, $"There are {d.Lows?.Count ?? 0} lows and {highs?.Count ?? 0} highs."), "Give a low and a high for each day.");
        RuleForEach(d => d.Lows).Must(n => n.Number is not null).Else("not-a-number", (_, n) => $"A low is \"{n.Shown}\", which is not a number.", "Write plain digits with a decimal point.");
        RuleForEach(d => d.Highs).Must(n => n.Number is not null).Else("not-a-number", (_, n) => $"A high is \"{n.Shown}\", which is not a number.", "Write plain digits with a decimal point.");
        RuleFor(d => d.Highs)
            .Must((d, highs) => highs is null || d.Lows is null || highs.Zip(d.Lows).All(x => !(x.First.Number < x.Second.Number)))
            .Else("low-above-high", "A low stands above the high of its day.", "Check the order of lows and highs.");
        RuleFor(d => d.Lows).Must((d, v) => ClimateWords.AreOfThisWorld(v, d.Unit) && ClimateWords.AreOfThisWorld(d.Highs, d.Unit)).Else("impossible-temperature", "A temperature is outside -90 to 140 °F (-68 to 60 °C).", "Check the numbers and the unit.");
    }
}
