using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Climate;

/// <summary>Twelve temperatures with their unit.</summary>
internal sealed class MonthsValidator : AbstractValidator<WrittenMonths>
{
    public MonthsValidator()
    {
        RuleFor(m => m.Unit).Must(ClimateWords.IsUnit).Else("temperature-unit", (_, u) => $"The unit of the temperatures is \"{Rules.Clip(u)}\".", "Write F or C.");
        RuleFor(m => m.Values)
            .Must(v => v is { Count: ClimateWords.Months })
            .Else("climate-months", (_, v) => string.Create(CultureInfo.InvariantCulture, $"There are {v?.Count ?? 0} monthly temperatures; there must be {ClimateWords.Months}."), "Give twelve, January first.");
        RuleForEach(m => m.Values).Must(n => n.Number is not null).Else("not-a-number", (_, n) => $"A monthly temperature is \"{n.Shown}\", which is not a number.", "Write plain digits with a decimal point.");
        RuleFor(m => m.Values).Must((m, v) => ClimateWords.AreOfThisWorld(v, m.Unit)).Else("impossible-temperature", "A temperature is outside -90 to 140 °F (-68 to 60 °C).", "Check the numbers and the unit.");
    }
}
