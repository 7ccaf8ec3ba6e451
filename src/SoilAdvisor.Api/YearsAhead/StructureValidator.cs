using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>A dressing that can be read: a material, and a rate or a depth.</summary>
internal sealed class StructureValidator : AbstractValidator<WrittenStructure>
{
    public StructureValidator()
    {
        RuleFor(s => s.Material).IsText("The material for structure", "material-missing", "Name the compost, for example yard-compost.");
        RuleFor(s => s.Rate).SetValidator(new QuantityValidator("The rate")!);
        RuleFor(s => s.Depth).SetValidator(new QuantityValidator("The depth")!);
        RuleFor(s => s.Rate)
            .Must((s, rate) => rate is null != s.Depth is null)
            .Else("structure-amount", (s, _) => s.Depth is null ? "The dressing for structure has no amount." : "The dressing for structure has both a rate and a depth.", "Give a rate, for example 5 ton/acre, or a depth, for example 0.5 in.");
    }
}
