using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A size class between two sieves.</summary>
internal sealed class SieveClassValidator : AbstractValidator<WrittenSieveClass>
{
    public SieveClassValidator()
    {
        RuleFor(c => c.Passing).IsOptionalNumber("The sieve passed").IsAtLeast(1, "The sieve passed", "openings to the inch").IsAtMost(SieveValidator.FinestSieve, "The sieve passed", "openings to the inch").IsWhole("The sieve passed");
        RuleFor(c => c.RetainedOn).IsOptionalNumber("The sieve stayed on").IsAtLeast(1, "The sieve stayed on", "openings to the inch").IsAtMost(SieveValidator.FinestSieve, "The sieve stayed on", "openings to the inch").IsWhole("The sieve stayed on");
        RuleFor(c => c.Percent).IsNumber("The size class").IsNotNegative("The size class").IsAtMost(100, "The size class", "%");
    }
}
