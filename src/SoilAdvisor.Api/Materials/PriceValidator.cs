using FluentValidation;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>A price with its currency and the amount that it buys.</summary>
internal sealed class PriceValidator : AbstractValidator<WrittenPrice>
{
    public PriceValidator()
    {
        RuleFor(p => p.Value).IsNumber("The price").IsNotNegative("The price").IsAtMost(1_000_000, "The price", "money");
        RuleFor(p => p.Currency)
            .Must(c => c is { Length: 3 } && c.All(char.IsAsciiLetterUpper))
            .Else("currency", (_, c) => c is null ? "The price has no currency." : $"\"{Rules.Clip(c)}\" is not a currency code.", "Use three letters, for example USD.");
        RuleFor(p => p.Per).NotNull().Else("price-without-amount", "The price does not say for how much.", "Give the mass it is for, for example {\"value\": 50, \"unit\": \"lb\"}.");
        RuleFor(p => p.Per).SetValidator(new QuantityValidator("The amount that the price is for")!);
    }
}
