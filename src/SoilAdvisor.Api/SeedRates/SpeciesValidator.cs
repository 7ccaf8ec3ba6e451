using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>A species that can be sown.</summary>
internal sealed class SpeciesValidator : AbstractValidator<WrittenSpecies>
{
    public SpeciesValidator()
    {
        RuleFor(s => s.CoverCrop).IsText("The cover crop", "cover-crop-missing", "Name it by its id; GET /v1/cover-crops lists them.");
        RuleFor(s => s.SharePercent).IsOptionalNumber("The share of the full rate").IsAboveZero("The share of the full rate").IsAtMost(150, "The share of the full rate", "%");
        RuleFor(s => s.SharePercent)
            .Must((s, share) => share is null || s.SeedsPerSquareFoot is null)
            .Else("share-and-seeds", "A share and a number of seeds are given for one species.", "Leave one of the two out.");
        RuleFor(s => s.SeedsPerSquareFoot).IsOptionalNumber("The seeds on a square foot").IsAboveZero("The seeds on a square foot").IsAtMost(5000, "The seeds on a square foot", "seeds/sq ft");
        RuleFor(s => s.SeedsPerPound).IsOptionalNumber("The seeds in a pound").IsAtLeast(1, "The seeds in a pound", "seeds/lb").IsAtMost(50_000_000, "The seeds in a pound", "seeds/lb");
        RuleFor(s => s.FullRate).SetValidator(new QuantityValidator("The full rate")!);
        RuleFor(s => s.Purity).IsOptionalNumber("The purity");
        RuleFor(s => s.Germination).IsOptionalNumber("The germination");
        RuleFor(s => s.Germination)
            .Must((s, germination) => germination is null == s.Purity is null)
            .Else("seed-tag-incomplete", "Purity and germination belong together.", "Copy both from the seed tag.");
        RuleFor(s => s.HardSeed).IsOptionalNumber("The hard seed");
        RuleFor(s => s.HardSeed)
            .Must((s, hard) => hard is null || s.Germination is not null)
            .Else("seed-tag-incomplete", "Hard seed is given without germination.", "Copy purity, germination and hard seed from the seed tag.");
        RuleFor(s => s.Price).SetValidator(new PriceValidator()!);
    }
}
