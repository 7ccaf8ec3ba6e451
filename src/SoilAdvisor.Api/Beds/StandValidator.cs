using FluentValidation;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.Beds;

/// <summary>A former stand: a crop or a cover crop, not both.</summary>
internal sealed class StandValidator : AbstractValidator<WrittenStand>
{
    /// <summary>Most cuts of one stand.</summary>
    public const int MostSamples = 50;

    public StandValidator()
    {
        RuleFor(s => s.Crop)
            .Must((s, crop) => new[] { crop is not null, s.CoverCrop is not null, s.Mixture is not null }.Count(given => given) == 1)
            .Else("stand-missing", "A former stand names a crop, a cover crop or a mixture of cover crops.", "Give crop, coverCrop or mixture.");
        RuleFor(s => s.Mixture)
            .HasAtMost(Limits.PerBed, "species");
        RuleFor(s => s.Mixture)
            .Must(m => m is null || m.Count > 1)
            .Else("mixture-of-one", "The mixture has fewer than two species.", "Name each species, or give coverCrop.");
        RuleFor(s => s.DryMatter)
            .Must((s, matter) => new[] { matter is not null, s.Samples is { Count: > 0 }, s.Height is not null }.Count(given => given) <= 1)
            .Else("dry-matter-twice", "The dry matter is given in more than one way.", "Give dryMatter, or samples, or height: one of them.");
        RuleFor(s => s.Samples).HasAtMost(MostSamples, "samples");
        RuleForEach(s => s.Samples).SetValidator(new SampleValidator());
        RuleFor(s => s.Height)
            .Must((s, height) => height is null || s.CoverCrop is not null)
            .Else("height-of-mixture", "The rule of thumb for height holds for one cover crop.", "Cut, dry and weigh samples, and give them as samples.");
        RuleFor(s => s.Height).SetValidator(new QuantityValidator("The height")!);
        RuleFor(s => s.CoverPercent).IsOptionalNumber("The ground covered").IsAboveZero("The ground covered").IsAtMost(100, "The ground covered", "%");
        RuleFor(s => s.Crop).IsOptionalText("The crop");
        RuleFor(s => s.CoverCrop).IsOptionalText("The cover crop");
        RuleFor(s => s.DryMatter).SetValidator(new QuantityValidator("The dry matter")!);
        RuleFor(s => s.NitrogenPercent).IsOptionalNumber("Nitrogen in the dry matter").IsAboveZero("Nitrogen in the dry matter").IsAtMost(10, "Nitrogen in the dry matter", "%");
        RuleFor(s => s.Stage).IsOptionalText("The stage", Limits.TextLetters);
        RuleFor(s => s.Killed).IsOptionalDate("The day it was killed");
    }

    /// <summary>Whether the dry matter of a stand is told in one way, no more and no less.</summary>
    public static bool MeasuredOnce(WrittenQuantity? matter, IReadOnlyList<WrittenSample>? samples, WrittenQuantity? height) =>
        new[] { matter is not null, samples is { Count: > 0 }, height is not null }.Count(given => given) == 1;
}
