namespace SoilAdvisor.ReferenceTables;

/// <summary>The reference tables hold faults and were not loaded. Nothing half-loaded is visible.</summary>
/// <param name="problems">Every fault, sorted.</param>
public sealed class ReferenceTableException(IReadOnlyList<TableProblem> problems)
    : Exception($"The reference tables hold {problems.Count} problem(s):\n{string.Join('\n', problems)}")
{
    /// <summary>Every fault, sorted by file and line.</summary>
    public IReadOnlyList<TableProblem> Problems { get; } = problems;
}
