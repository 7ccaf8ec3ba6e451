using SoilAdvisor.Api.Http;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Answers;

/// <summary>What one calculation has at hand, and what it collects on the way: refusals, assumptions, sources.</summary>
internal sealed class Calculation(Tables tables, Asked asked, FaultList faults, DateOnly today, CancellationToken cancel)
{
    private readonly List<Assumption> assumptions = [];
    private readonly List<(string, IReadOnlyList<WorkingLine>)> sheets = [];

    public Tables Tables { get; } = tables;

    public Asked Asked { get; } = asked;

    /// <summary>Faults that the validator found, and every refusal since.</summary>
    public FaultList Faults { get; } = faults;

    /// <summary>The day of the request; used only where the caller gives no date, and then said.</summary>
    public DateOnly Today { get; } = today;

    public CancellationToken Cancel { get; } = cancel;

    public Bibliography Bibliography { get; } = new(tables);

    public Units Units => new(Asked.Metric);

    /// <summary>Every sheet of this calculation with what it is about, in the order of the work.</summary>
    public IReadOnlyList<(string About, IReadOnlyList<WorkingLine> Lines)> Sheets => sheets;

    /// <summary>A sheet for the working when it was asked for; null otherwise.</summary>
    public WorkingSheet? NewSheet()
    {
        if (!Asked.Working)
        {
            return null;
        }

        var sheet = new WorkingSheet();
        Keep("", sheet.Lines);
        return sheet;
    }

    /// <summary>Keeps lines for a work sheet.</summary>
    /// <param name="about">What they are about, for example "Bed B1"; empty for the calculation as a whole.</param>
    /// <param name="lines">The lines; they may still grow.</param>
    public void Keep(string about, IReadOnlyList<WorkingLine> lines) => sheets.Add((about, lines));

    public CitedAs Cite(Citation citation) => Bibliography.Cite(citation);

    public void Assume(IEnumerable<Assumption> more)
    {
        foreach (var assumption in more)
        {
            if (!assumptions.Contains(assumption))
            {
                assumptions.Add(assumption);
            }
        }
    }

    /// <summary>What was assumed for the answer as a whole.</summary>
    public IReadOnlyList<Assumption> OwnAssumptions => assumptions;

    public IReadOnlyList<AssumptionAnswer> Assumptions() => [.. assumptions.Select(Of)];

    public IReadOnlyList<AssumptionAnswer> Assumptions(IEnumerable<Assumption> some) => [.. some.Distinct().Select(Of)];

    public Versions Versions() => Product.Versions(Tables);

    private AssumptionAnswer Of(Assumption assumption) => new(assumption.Code, assumption.Text, Cite(assumption.Source));
}
