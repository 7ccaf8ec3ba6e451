namespace SoilAdvisor.Api.Working;

/// <summary>The steps about one thing.</summary>
/// <param name="About">For example "Bed B1"; left out for the calculation as a whole.</param>
/// <param name="Lines">The steps.</param>
internal sealed record WorkSheetPartAnswer(string? About, IReadOnlyList<WorkingLineAnswer> Lines);
