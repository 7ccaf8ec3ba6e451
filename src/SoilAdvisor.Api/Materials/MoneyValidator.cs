using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Materials;

/// <summary>An amount of money with its currency.</summary>
internal sealed class MoneyValidator : AbstractValidator<WrittenMoney>
{
    public MoneyValidator(string what)
    {
        RuleFor(m => m.Value).IsNumber(what).IsNotNegative(what).IsAtMost(10_000_000, what, "money");
        RuleFor(m => m.Currency)
            .Must(c => c is { Length: 3 } && c.All(char.IsAsciiLetterUpper))
            .Else("currency", (_, c) => c is null ? $"{what} has no currency." : $"\"{Rules.Clip(c)}\" is not a currency code.", "Use three letters, for example USD.");
    }
}
