using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// A requirement read from printed cells. Between two rows the more acid one counts (more lime), between two columns the lower target (never
/// limed past the target); both are said. Outside the table there is no answer.
/// </summary>
internal static class LimeByTable
{
    public static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method)
    {
        var reading = LimeReading.Of(question, method);
        if (!reading.TryGet(out var read, out var refusal))
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        var cells = method.Cells.Where(c => c.Soils.Count == 0 || (question.Test.SoilGroup is { } soil && c.Soils.Contains(soil))).ToList();
        if (cells.Count == 0)
        {
            return Answer<LimeRequirement>.Refused("soil-outside-method", $"{method.Title} goes by texture, and the soil test names none that it prints.", "Name the texture of the soil.");
        }

        if (method.Rows == LimeRows.UpperLimits)
        {
            var limit = cells.Where(c => c.Row >= read.Value).MinBy(c => c.Row);
            return Answer<LimeRequirement>.Given(limit is null ? question.AnswerOf(method, default) : AtCell(question, method, read, limit));
        }

        var targets = cells.Select(c => c.TargetPh).OfType<decimal>().Distinct().Order().ToList();
        if (LimeTargets.Printed(question, method, targets) is not { } target)
        {
            return LimeTargets.Outside(question, method, targets);
        }

        var column = cells.Where(c => c.TargetPh == target).OrderBy(c => read.Acidness(c.Row)).ToList();
        if (read.Acidness(read.Value) < read.Acidness(column[0].Row) || read.Acidness(read.Value) > read.Acidness(column[^1].Row))
        {
            return Outside(method, read, column);
        }

        if (question.Ph >= target)
        {
            return Answer<LimeRequirement>.Given(question.AnswerOf(method, default));
        }

        var acid = column.First(c => read.Acidness(c.Row) >= read.Acidness(read.Value));
        return Answer<LimeRequirement>.Given(acid.Row != read.Value && method.Interpolate
            ? Between(question, method, read, acid, column.Last(c => read.Acidness(c.Row) < read.Acidness(read.Value)))
            : AtCell(question, method, read, acid));
    }

    private static Answer<LimeRequirement> Outside(LimeMethod method, LimeReading read, List<LimeCell> column)
    {
        var (lowest, highest) = (column.Min(c => c.Row), column.Max(c => c.Row));
        return Answer<LimeRequirement>.Refused(read.Outside(
            Invariant($"{method.Title} is printed for {read.Name} {lowest} to {highest}; the reading is {read.Value}."),
            read.Acidness(read.Value) < read.Acidness(column[0].Row)
                ? "The soil holds little reserve acidity. Ask the laboratory whether it advises any lime."
                : $"Have the {read.Name} measured again, or ask the laboratory for its lime rate."));
    }

    private static LimeRequirement AtCell(LimeQuestion question, LimeMethod method, LimeReading read, LimeCell cell)
    {
        if (cell.Row != read.Value)
        {
            question.Assume(
                "lime-table-row",
                method.Rows == LimeRows.UpperLimits
                    ? Invariant($"{method.Title} prints classes of {read.Name}; {read.Value} lies in the class up to {cell.Row}.")
                    : Invariant($"{method.Title} prints no row for {read.Name} {read.Value}; the next more acid row {cell.Row} is read, which gives more lime."),
                method.Source);
        }

        question.Working?.LookUp(
            "lime-table",
            "Lime requirement from the table",
            cell.TargetPh is { } target ? Invariant($"{method.Title}: {read.Name} {cell.Row}, target pH {target}") : Invariant($"{method.Title}: {read.Name} up to {cell.Row}"),
            [
                new WorkingInput(read.Symbol, read.Name, (double)read.Value, null, read.Unit, read.From),
                new WorkingInput("T", "target pH", (double)question.Target.Value, null, "pH", question.TargetFrom),
            ],
            Invariant($"{cell.Rate} {method.Unit} {method.Basis.Words}"),
            cell.Source);
        return question.AnswerOf(method, Printed(method, cell));
    }

    private static LimeRequirement Between(LimeQuestion question, LimeMethod method, LimeReading read, LimeCell acid, LimeCell mild)
    {
        var (lower, upper) = acid.Row < mild.Row ? (acid, mild) : (mild, acid);
        var rate = LimeFormulas.BetweenCells.Of(
            (Printed(method, lower), Printed(method, upper), new Coefficient((double)lower.Row), new Coefficient((double)upper.Row), new Coefficient((double)read.Value)),
            question.Working,
            Origin.From(lower.Source),
            Origin.From(upper.Source),
            Origin.From(lower.Source),
            Origin.From(upper.Source),
            read.From);
        return question.AnswerOf(method, rate);
    }

    private static MassPerArea Printed(LimeMethod method, LimeCell cell) => method.One * (double)cell.Rate;
}
