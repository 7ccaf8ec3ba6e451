using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>Seed that can be counted.</summary>
internal sealed class SeedValidator : AbstractValidator<WrittenSeed>
{
    public SeedValidator()
    {
        RuleFor(s => s.CoverCrop).IsText("The cover crop", "cover-crop-missing", "Name it by its id; GET /v1/cover-crops lists them.");
        RuleFor(s => s.OnHand).SetValidator(new QuantityValidator("The seed on hand", zeroAllowed: true)!);
        RuleFor(s => s.Pack).SetValidator(new QuantityValidator("The pack")!);
        RuleFor(s => s.Price).SetValidator(new PriceValidator()!);
    }
}
