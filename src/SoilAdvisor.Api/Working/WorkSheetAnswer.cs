using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Working;

/// <summary>Steps with blanks: a result, what an earlier line found, and the row of a look-up are left out.</summary>
internal sealed record WorkSheetAnswer(IReadOnlyList<WorkSheetPartAnswer> WorkSheet, IReadOnlyList<AssumptionAnswer> Assumptions, IReadOnlyList<SourceAnswer> Sources, Versions Versions);
