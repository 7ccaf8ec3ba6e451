using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// A requirement read from printed cells. Between two rows the lower buffer pH counts (more lime), between two columns the lower target
/// (never limed past the target); both are said. Outside the table there is no answer.
/// </summary>
internal static class LimeByTable
{
    public static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method)
    {
        var reading = question.Test.Of(Analyte.BufferPh)!;
        var buffer = reading.Amount.Number;
        var columns = method.Cells.Select(c => c.TargetPh).Distinct().Order().ToList();
        var rows = method.Cells.Select(c => c.BufferPh).Distinct().Order().ToList();
        if (question.Target.Value < columns[0])
        {
            return Answer<LimeRequirement>.Refused(
                "target-outside-method",
                Invariant($"{method.Title} is printed for target pH {string.Join(", ", columns.Select(c => Invariant($"{c}")))}; the target is {question.Target.Value}."),
                "Choose a method that prints the target, or give the laboratory's lime rate.");
        }

        if (buffer < rows[0] || buffer > rows[^1])
        {
            return Answer<LimeRequirement>.Refused(
                "buffer-outside-method",
                Invariant($"{method.Title} is printed for buffer pH {rows[0]} to {rows[^1]}; the reading is {buffer}."),
                buffer > rows[^1] ? "The soil holds little reserve acidity. Ask the laboratory whether it advises any lime." : "Have the buffer pH measured again, or ask the laboratory for its lime rate.");
        }

        var column = columns.Last(c => c <= question.Target.Value);
        if (column != question.Target.Value)
        {
            question.Assume("lime-table-target", Invariant($"{method.Title} does not print target pH {question.Target.Value}; the next lower target {column} is read."), method.Source);
        }

        if (question.Ph >= column)
        {
            return Answer<LimeRequirement>.Given(question.AnswerOf(method, default));
        }

        var row = rows.Last(r => r <= buffer);
        return Answer<LimeRequirement>.Given(row != buffer && method.Interpolate
            ? Between(question, method, reading, Cell(method, row, column), Cell(method, rows.First(r => r > buffer), column))
            : AtCell(question, method, reading, Cell(method, row, column)));
    }

    private static LimeRequirement AtCell(LimeQuestion question, LimeMethod method, Reading reading, LimeCell cell)
    {
        if (cell.BufferPh != reading.Amount.Number)
        {
            question.Assume(
                "lime-table-row",
                Invariant($"{method.Title} prints no row for buffer pH {reading.Amount.Number}; the next lower row {cell.BufferPh} is read, which gives more lime."),
                method.Source);
        }

        question.Working?.LookUp(
            "lime-table",
            "Lime requirement from the table",
            Invariant($"{method.Title}: buffer pH {cell.BufferPh}, target pH {cell.TargetPh}"),
            [
                new WorkingInput("BpH", "buffer pH", (double)reading.Amount.Number, null, "pH", Origin.Given(reading.Where)),
                new WorkingInput("T", "target pH", (double)question.Target.Value, null, "pH", question.TargetFrom),
            ],
            Invariant($"{cell.Rate} {method.Unit} {method.Basis.Words}"),
            cell.Source);
        return question.AnswerOf(method, RateOf(method, cell).Amount);
    }

    private static LimeRequirement Between(LimeQuestion question, LimeMethod method, Reading reading, LimeCell lower, LimeCell upper)
    {
        var rate = LimeFormulas.BetweenCells.Of(
            (RateOf(method, lower), RateOf(method, upper), new Coefficient((double)lower.BufferPh), new Coefficient((double)upper.BufferPh), new Coefficient((double)reading.Amount.Number)),
            question.Working,
            Origin.From(lower.Source),
            Origin.From(upper.Source),
            Origin.From(lower.Source),
            Origin.From(upper.Source),
            Origin.Given(reading.Where));
        return question.AnswerOf(method, rate.Amount);
    }

    private static LimeCell Cell(LimeMethod method, decimal buffer, decimal target) => method.Cells.First(c => c.BufferPh == buffer && c.TargetPh == target);

    private static Rate<CalciumCarbonate> RateOf(LimeMethod method, LimeCell cell) => Rate<CalciumCarbonate>.FromPoundsPerAcre((double)cell.Rate * method.PoundsInUnit);
}
