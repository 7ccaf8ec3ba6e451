using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Lime;

/// <summary>One spreading: rate, amount for the area, and when, counted from the first.</summary>
internal sealed record DoseAnswer(decimal Value, string Unit, Quantity? PerBed, int? MonthsFrom, int? MonthsTo, string? Date);
