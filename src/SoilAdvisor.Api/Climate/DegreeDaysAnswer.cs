using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Climate;

/// <summary>Degree-days of a span with base, cut-off and method, and the same span by every method.</summary>
internal sealed record DegreeDaysAnswer(
    decimal Value, string Unit, Quantity Base, Quantity? CutOff, string Method, string From, string To, int GivenDays, int InterpolatedDays, IReadOnlyList<MethodSum> ByMethod, CitedAs By) : Sourced(By);
