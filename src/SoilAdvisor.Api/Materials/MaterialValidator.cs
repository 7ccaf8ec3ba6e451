using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>An offered material that can be read.</summary>
internal sealed class MaterialValidator : AbstractValidator<WrittenMaterial>
{
    public MaterialValidator()
    {
        RuleFor(m => m.Material).IsText("The material", "material-missing", "Name the material by its id; GET /v1/materials lists them.");
        RuleFor(m => m.OnHand).SetValidator(new QuantityValidator("The stock", zeroAllowed: true)!);
        RuleFor(m => m.Pack).SetValidator(new QuantityValidator("The pack")!);
        RuleFor(m => m.Freight).SetValidator(new MoneyValidator("The freight")!);
        RuleFor(m => m.Origin)
            .Must(o => o is null || MaterialReader.Origins.ContainsKey(o))
            .Else("unknown-origin", (_, o) => $"\"{Rules.Clip(o)}\" does not say where a material is from.", $"Use one of: {string.Join(", ", MaterialReader.Origins.Keys)}; leave it out for bought.");
        RuleFor(m => m.Most).SetValidator(new CapValidator()!);
        RuleFor(m => m.Analysis).SetValidator(new AnalysisValidator()!);
        RuleFor(m => m.Price).SetValidator(new PriceValidator()!);
    }
}
