using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Working;

/// <summary>One line on the board.</summary>
internal sealed record WorkingLineAnswer(
    int Id, string? Section, string Formula, string Title, string Shown, IReadOnlyList<WorkingInputAnswer> Inputs, WorkingResultAnswer Result, CitedAs By)
    : Sourced(By);
