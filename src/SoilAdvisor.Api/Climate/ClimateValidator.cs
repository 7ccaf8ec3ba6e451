using FluentValidation;
using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Climate;

/// <summary>A climate that can be read.</summary>
internal sealed class ClimateValidator : AbstractValidator<WrittenClimate>
{
    public ClimateValidator()
    {
        RuleFor(c => c.MonthlyMeanTemperature).SetValidator(new MonthsValidator()!);
        RuleFor(c => c.MonthlyLowTemperature).SetValidator(new MonthsValidator()!);
        RuleFor(c => c.MonthlyHighTemperature).SetValidator(new MonthsValidator()!);
        RuleFor(c => c.MonthlyHighTemperature)
            .Must((c, high) => high is null == c.MonthlyLowTemperature is null)
            .Else("climate-extremes", "Monthly lows and highs belong together.", "Give both, or only monthlyMeanTemperature.");
        RuleFor(c => c.MonthlyHighTemperature)
            .Must((c, high) => !LowAboveHigh(c.MonthlyLowTemperature, high))
            .Else("low-above-high", "A month's low stands above its high.", "Check the order of lows and highs.");
        RuleFor(c => c.Daily).SetValidator(new DaysValidator()!);
        RuleFor(c => c.DegreeDays).SetValidator(new DegreeDaysValidator()!);
        RuleFor(c => c.HardinessZone)
            .Must(z => z is null || HardinessZone.Read(z) is not null)
            .Else("hardiness-zone-form", (_, z) => $"\"{Rules.Clip(z)}\" is not a hardiness zone.", "Write 1 to 13, with a or b if you know it: 6 or 6b.");
        RuleFor(c => c.LastFrost).IsOptionalDate("The last frost in spring");
        RuleFor(c => c.FirstFrost).IsOptionalDate("The first frost in fall");
    }

    private static bool LowAboveHigh(WrittenMonths? lows, WrittenMonths? highs) =>
        lows?.Values is { Count: ClimateWords.Months } low && highs?.Values is { Count: ClimateWords.Months } high
        && low.Zip(high).Any(m => ClimateWords.Read(m.First, lows.Unit) is { } a && ClimateWords.Read(m.Second, highs.Unit) is { } b && a.DegreesFahrenheit > b.DegreesFahrenheit);
}
