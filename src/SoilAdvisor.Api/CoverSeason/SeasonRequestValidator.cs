using FluentValidation;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>A season request that can be answered.</summary>
internal sealed class SeasonRequestValidator : AbstractValidator<SeasonRequest>
{
    public SeasonRequestValidator()
    {
        RuleFor(r => r.Farm).IsOptionalText("The farm's name", Limits.TextLetters);
        RuleFor(r => r.Region).IsOptionalText("The region");
        RuleFor(r => r.Date).IsOptionalDate("The date of the season");
        RuleFor(r => r.Beds)
            .HasSome("beds", "no-beds", "Give at least one bed with its size, crops and gap.")
            .HasAtMost(Limits.Beds, "beds");
        RuleForEach(r => r.Beds).SetValidator(new BedValidator());
        RuleFor(r => r.Frost).SetValidator(new FrostValidator()!);
        RuleFor(r => r.Climate).SetValidator(new ClimateValidator()!);
        RuleFor(r => r.Aims).HasAtMost(CoverCropChoices.Aims.Count, "aims");
        RuleForEach(r => r.Aims)
            .Must(a => CoverCropChoices.Aims.Contains(a))
            .Else("unknown-aim", (_, a) => $"\"{Rules.Clip(a)}\" is not an aim.", $"Use: {string.Join(", ", CoverCropChoices.Aims)}.");
        RuleFor(r => r.Weights).Must(w => CoverCropWeightsReader.Unknown(w) is null)
            .Else("unknown-weight", (_, w) => $"\"{Rules.Clip(CoverCropWeightsReader.Unknown(w))}\" is not a kind of reason.", $"Use: {string.Join(", ", CoverCropWeights.Kinds.Order(StringComparer.Ordinal))}.");
        RuleFor(r => r.Weights).Must(CoverCropWeightsReader.AreInRange)
            .Else("weight-range", "A weight is not a number from 0 to 10.", "Give 0 to leave a reason in words only, 1 for the usual weight of most, up to 10.");
        RuleFor(r => r.CoverSeason).SetValidator(new SeasonValidator()!);
    }
}
