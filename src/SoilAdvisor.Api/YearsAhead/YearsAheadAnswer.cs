using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>Phosphorus and potassium of a bed over the years, when this season's plan and crops repeat.</summary>
internal sealed record YearsAheadAnswer(int Years, OutlookAnswer? Phosphorus, OutlookAnswer? Potassium, IReadOnlyList<HoldRateAnswer> HoldRates, SaidAnswer? WithoutPhosphorus);
