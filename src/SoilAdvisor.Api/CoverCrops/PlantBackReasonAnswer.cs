using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>One reason to wait; kept says whether its days are kept free in the calendar.</summary>
internal sealed record PlantBackReasonAnswer(string Cause, string Text, int DaysLow, int? DaysHigh, bool Kept, CitedAs By) : Sourced(By);
