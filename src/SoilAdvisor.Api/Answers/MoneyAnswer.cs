using SoilAdvisor.Agronomy.Materials;

namespace SoilAdvisor.Api.Answers;

/// <summary>An amount of money, rounded to cents.</summary>
internal sealed record MoneyAnswer(decimal Value, string Currency)
{
    public static MoneyAnswer? Of(Money? money) => money is { } m ? new(decimal.Round(m.Value, 2, MidpointRounding.AwayFromZero), m.Currency) : null;
}
