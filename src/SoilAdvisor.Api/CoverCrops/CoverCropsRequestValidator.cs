using FluentValidation;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>A cover-crop request that can be answered.</summary>
internal sealed class CoverCropsRequestValidator : AbstractValidator<CoverCropsRequest>
{
    public CoverCropsRequestValidator()
    {
        RuleFor(r => r.Window).NotNull().Else("window-missing", "There is no window.", "Give the first and the last free day: {\"from\": \"2026-07-01\", \"to\": \"2026-09-15\"}.");
        RuleFor(r => r.Window).SetValidator(new GapValidator()!);
        RuleFor(r => r.Aims).HasAtMost(CoverCropChoices.Aims.Count, "aims");
        RuleForEach(r => r.Aims)
            .Must(a => CoverCropChoices.Aims.Contains(a))
            .Else("unknown-aim", (_, a) => $"\"{Rules.Clip(a)}\" is not an aim.", $"Use: {string.Join(", ", CoverCropChoices.Aims)}.");
        RuleFor(r => r.Frost).SetValidator(new FrostValidator()!);
        RuleFor(r => r.NextCrop).IsOptionalText("The next crop");
        RuleFor(r => r.LastCrop).IsOptionalText("The last crop");
        RuleFor(r => r.Guide).IsOptionalText("The guide");
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.SoilTest).SetValidator(new SoilTestValidator()!);
        RuleFor(r => r.Area).SetValidator(new QuantityValidator("The area")!);
    }
}
