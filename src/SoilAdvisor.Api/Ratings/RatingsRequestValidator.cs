using FluentValidation;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Ratings;

/// <summary>A ratings request that can be answered.</summary>
internal sealed class RatingsRequestValidator : AbstractValidator<RatingsRequest>
{
    public RatingsRequestValidator()
    {
        RuleFor(r => r.Guide).IsOptionalText("The guide");
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.Subregion).IsOptionalText("The subregion");
        RuleFor(r => r.Crop).IsOptionalText("The crop");
        RuleFor(r => r.Beside).HasAtMost(Limits.GuidesBeside, "guides beside");
        RuleForEach(r => r.Beside)
            .Must(g => g.Length <= Limits.IdLetters)
            .Else("text-too-long", (_, g) => string.Create(CultureInfo.InvariantCulture, $"The guide has {g.Length} letters; at most {Limits.IdLetters} are taken."), "Give the id of a guide; /v1/guides lists them.");
        RuleFor(r => r.Conversions).HasAtMost(Limits.Conversions, "conversions");
        RuleForEach(r => r.Conversions)
            .Must(c => c.Length <= Limits.IdLetters)
            .Else("text-too-long", (_, c) => string.Create(CultureInfo.InvariantCulture, $"The conversion has {c.Length} letters; at most {Limits.IdLetters} are taken."), "Give the id of a conversion.");
        RuleFor(r => r.SoilTest).NotNull().Else("soil-test-missing", "There is no soilTest.", "Send the soil test with its readings.");
        RuleFor(r => r.SoilTest).SetValidator(new SoilTestValidator()!);
    }
}
