using FluentValidation;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Climate;

/// <summary>A base, a cut-off above it and a method that is known.</summary>
internal sealed class DegreeDaysValidator : AbstractValidator<WrittenDegreeDays>
{
    public DegreeDaysValidator()
    {
        RuleFor(d => d.Base).Must(IsTemperature).Else("temperature-form", "The base is not a temperature.", "Write it like {\"value\": 40, \"unit\": \"F\"}; the unit is F or C.");
        RuleFor(d => d.CutOff).Must(IsTemperature).Else("temperature-form", "The cut-off is not a temperature.", "Write it like {\"value\": 86, \"unit\": \"F\"}; the unit is F or C.");
        RuleFor(d => d.CutOff)
            .Must((d, most) => Read(most) is not { } cutOff || Read(d.Base) is not { } floor || cutOff.DegreesFahrenheit > floor.DegreesFahrenheit)
            .Else("cut-off-below-base", "The cut-off is not above the base.", "Give a cut-off above the base, or leave it out.");
        RuleFor(d => d.Method)
            .Must(m => m is null || ClimateWords.Methods.ContainsKey(m))
            .Else("unknown-degree-day-method", (_, m) => $"\"{Rules.Clip(m)}\" is not a way to count degree-days.", $"Use: {string.Join(", ", ClimateWords.Methods.Keys)}.");
    }

    private static bool IsTemperature(WrittenQuantity? written) => written is null || (Read(written) is { } t && ClimateWords.IsOfThisWorld(t));

    private static UnitsNet.Temperature? Read(WrittenQuantity? written) => ClimateWords.Read(written?.Value, written?.Unit);
}
