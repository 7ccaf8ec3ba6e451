using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Plans;

/// <summary>Options that can be read.</summary>
internal sealed class PlanOptionsValidator : AbstractValidator<PlanOptions>
{
    public PlanOptionsValidator()
    {
        RuleFor(o => o.Date).IsOptionalDate("The date of the plan");
        RuleFor(o => o.Frost).SetValidator(new Beds.FrostValidator()!);
        RuleFor(o => o.Limits).SetValidator(new FarmLimitsValidator()!);
        RuleFor(o => o.Years).IsOptionalNumber("The number of years").IsAboveZero("The number of years").IsWhole("The number of years").IsAtMost(Agronomy.YearsAhead.Projections.MostYears, "The number of years", "years");
        RuleFor(o => o.LimeMethod).IsOptionalText("The lime method");
        RuleFor(o => o.Currency)
            .Must(c => c is null || (c.Length == 3 && c.All(char.IsAsciiLetterUpper)))
            .Else("currency", (_, c) => $"\"{Rules.Clip(c)}\" is not a currency code.", "Use three letters, for example USD.");
    }
}
