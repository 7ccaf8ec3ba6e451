using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Sampling;

/// <summary>A bed that can be compared with others.</summary>
internal sealed class SampledBedValidator : AbstractValidator<WrittenSampledBed>
{
    /// <summary>Written ids of the sites.</summary>
    public static readonly IReadOnlyList<string> Sites = ["field", "high-tunnel"];

    public SampledBedValidator()
    {
        RuleFor(b => b.Id).IsText("The bed's id", "id-missing", "Give each bed the name you call it by.");
        RuleFor(b => b.Soil).IsOptionalText("The soil", Limits.TextLetters);
        RuleFor(b => b.CropHistory).HasAtMost(Limits.PerBed, "crops of one bed");
        RuleForEach(b => b.CropHistory).Must(IsName).Else("entry-not-a-name", "A crop is left blank or is very long.", "Name the crop in at most 200 letters, or leave the entry out.");
        RuleFor(b => b.Amendments).HasAtMost(Limits.PerBed, "amendments of one bed");
        RuleForEach(b => b.Amendments).Must(IsName).Else("entry-not-a-name", "An amendment is left blank or is very long.", "Name what was spread in at most 200 letters, or leave the entry out.");
        RuleFor(b => b.Site)
            .Must(s => s is null || Sites.Contains(s))
            .Else("unknown-site", (_, s) => $"\"{Rules.Clip(s)}\" is not a known site.", "Use field or high-tunnel.");
    }

    private static bool IsName(string? text) => !string.IsNullOrWhiteSpace(text) && text.Length <= Limits.TextLetters;
}
