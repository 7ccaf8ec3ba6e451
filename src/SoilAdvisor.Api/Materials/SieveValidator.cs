using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A sieve and what passes it.</summary>
internal sealed class SieveValidator : AbstractValidator<WrittenSieve>
{
    public const decimal FinestSieve = 400;

    public SieveValidator()
    {
        RuleFor(s => s.Sieve).IsNumber("The sieve").IsAtLeast(1, "The sieve", "openings to the inch").IsAtMost(FinestSieve, "The sieve", "openings to the inch").IsWhole("The sieve");
        RuleFor(s => s.Passing).IsNumber("What passes the sieve").IsNotNegative("What passes the sieve").IsAtMost(100, "What passes the sieve", "%");
    }
}
