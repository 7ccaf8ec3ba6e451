using FluentValidation;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Plans;

/// <summary>Options that can be read.</summary>
internal sealed class PlanOptionsValidator : AbstractValidator<PlanOptions>
{
    public PlanOptionsValidator()
    {
        RuleFor(o => o.Date).IsOptionalDate("The date of the plan");
        RuleFor(o => o.Frost).SetValidator(new Beds.FrostValidator()!);
        RuleFor(o => o.Climate).SetValidator(new ClimateValidator()!);
        RuleFor(o => o.CoverCropWeights).Must(w => CoverCropWeightsReader.Unknown(w) is null)
            .Else("unknown-weight", (_, w) => $"\"{Rules.Clip(CoverCropWeightsReader.Unknown(w))}\" is not a kind of reason.", $"Use: {string.Join(", ", CoverCropWeights.Kinds.Order(StringComparer.Ordinal))}.");
        RuleFor(o => o.CoverCropWeights).Must(CoverCropWeightsReader.AreInRange)
            .Else("weight-range", "A weight is not a number from 0 to 10.", "Give 0 to leave a reason in words only, 1 for the usual weight of most, up to 10.");
        RuleFor(o => o.SoilTemperature).SetValidator(new NitrogenSupply.SoilTemperatureValidator()!);
        RuleFor(o => o.CoverSeason).SetValidator(new SeasonValidator()!);
        RuleFor(o => o.Limits).SetValidator(new FarmLimitsValidator()!);
        RuleFor(o => o.Years).IsOptionalNumber("The number of years").IsAboveZero("The number of years").IsWhole("The number of years").IsAtMost(Agronomy.YearsAhead.Projections.MostYears, "The number of years", "years");
        RuleFor(o => o.Measures).SetValidator(new FieldWork.MeasuresValidator()!);
        RuleFor(o => o.MetalRule).IsOptionalText("The rule on metals");
        RuleFor(o => o.LimeMethod).IsOptionalText("The lime method");
        RuleFor(o => o.Currency)
            .Must(c => c is null || (c.Length == 3 && c.All(char.IsAsciiLetterUpper)))
            .Else("currency", (_, c) => $"\"{Rules.Clip(c)}\" is not a currency code.", "Use three letters, for example USD.");
    }
}
