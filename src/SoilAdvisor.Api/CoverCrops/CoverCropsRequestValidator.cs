using FluentValidation;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Climate;
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
        RuleFor(r => r.Weights).Must(w => CoverCropWeightsReader.Unknown(w) is null)
            .Else("unknown-weight", (_, w) => $"\"{Rules.Clip(CoverCropWeightsReader.Unknown(w))}\" is not a kind of reason.", $"Use: {string.Join(", ", CoverCropWeights.Kinds.Order(StringComparer.Ordinal))}.");
        RuleFor(r => r.Weights).Must(CoverCropWeightsReader.AreInRange)
            .Else("weight-range", "A weight is not a number from 0 to 10.", "Give 0 to leave a reason in words only, 1 for the usual weight of most, up to 10.");
        RuleFor(r => r.Problems).HasAtMost(Limits.PerBed, "problems");
        RuleForEach(r => r.Problems)
            .Must(p => p.Length is > 0 and <= Limits.IdLetters)
            .Else("problem-form", (_, p) => $"\"{Rules.Clip(p)}\" is not the name of a problem.", "Write a word such as root-knot.");
        RuleFor(r => r.TerminationZone).IsOptionalNumber("The termination zone").IsWhole("The termination zone").IsAtLeast(1, "The termination zone", "").IsAtMost(4, "The termination zone", "");
        RuleFor(r => r.Climate).SetValidator(new ClimateValidator()!);
        RuleFor(r => r.Frost).SetValidator(new FrostValidator()!);
        RuleFor(r => r.NextCrop).IsOptionalText("The next crop");
        RuleFor(r => r.LastCrop).IsOptionalText("The last crop");
        RuleFor(r => r.Guide).IsOptionalText("The guide");
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.SoilTest).SetValidator(new SoilTestValidator()!);
        RuleFor(r => r.Area).SetValidator(new QuantityValidator("The area")!);
    }
}
