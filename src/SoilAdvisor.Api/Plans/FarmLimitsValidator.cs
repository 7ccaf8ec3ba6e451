using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;

namespace SoilAdvisor.Api.Plans;

/// <summary>Limits of a farm that can be kept.</summary>
internal sealed class FarmLimitsValidator : AbstractValidator<WrittenFarmLimits>
{
    public FarmLimitsValidator()
    {
        RuleFor(l => l.ProductsPerBed).IsOptionalNumber("The number of products on a bed").IsAboveZero("The number of products on a bed").IsWhole("The number of products on a bed").IsAtMost(Limits.Materials, "The number of products on a bed", "products");
        RuleFor(l => l.Products).IsOptionalNumber("The number of products").IsAboveZero("The number of products").IsWhole("The number of products").IsAtMost(Limits.Materials, "The number of products", "products");
        RuleFor(l => l.SmallestRate).SetValidator(new QuantityValidator("The smallest rate")!);
        RuleFor(l => l.LabourPerPass).SetValidator(new MoneyValidator("The labour of a pass")!);
        RuleFor(l => l.Budget).SetValidator(new MoneyValidator("The budget")!);
        RuleFor(l => l.Ceilings).HasAtMost(Limits.PerBed, "ceilings");
        RuleForEach(l => l.Ceilings).SetValidator(new CeilingValidator());
        RuleFor(l => l.ExcessPenalty).SetValidator(new MoneyValidator("The penalty for excess")!);
        RuleFor(l => l.Seconds).IsOptionalNumber("The time of the search").IsAboveZero("The time of the search").IsWhole("The time of the search").IsAtMost(30, "The time of the search", "seconds");
    }
}
