using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.NitrogenSupply;

/// <summary>Soil temperatures with a unit.</summary>
internal sealed class SoilTemperatureValidator : AbstractValidator<WrittenSoilTemperature>
{
    public SoilTemperatureValidator()
    {
        RuleFor(t => t.Unit)
            .Must(u => u is "C" or "F")
            .Else("unknown-unit", (_, u) => u is null ? "The soil temperature has no unit." : $"\"{Rules.Clip(u)}\" is not a unit of temperature here.", "Use C or F.");
        RuleFor(t => t.Monthly)
            .Must(m => m is { Count: 12 } && m.All(n => n.Number is not null))
            .Else("soil-temperature-count", (_, m) => string.Create(CultureInfo.InvariantCulture, $"There are {m?.Count(n => n.Number is not null) ?? 0} soil temperatures that are numbers; a year has 12 months."), "Give twelve monthly means, January first, in plain digits.");
    }
}
