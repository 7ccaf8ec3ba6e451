using System.Diagnostics;
using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Working;

/// <summary>Writes the working out; with ten digits, so that a pocket calculator reproduces each line.</summary>
internal static class WorkingWriter
{
    private const int Digits = 10;

    /// <summary>The lines; null when none were asked for.</summary>
    public static IReadOnlyList<WorkingLineAnswer>? Write(IReadOnlyList<WorkingLine>? lines, Bibliography bibliography) =>
        lines is null ? null : [.. lines.Select(line => Write(line, bibliography))];

    private static WorkingLineAnswer Write(WorkingLine line, Bibliography bibliography) => new(
        line.Number,
        line.Section.Length > 0 ? line.Section : null,
        line.Formula,
        line.Title,
        line.Shown,
        [.. line.Inputs.Select(input => Write(input, bibliography))],
        new WorkingResultAnswer(
            line.ResultSymbol.Length > 0 ? line.ResultSymbol : null,
            line.Result is { } result ? Units.Rounded(result, Digits) : null,
            line.ResultText,
            line.ResultUnit.Length > 0 ? line.ResultUnit : null),
        bibliography.Cite(line.Source));

    private static WorkingInputAnswer Write(WorkingInput input, Bibliography bibliography)
    {
        var value = input.Value is { } number ? Units.Rounded(number, Digits) : (decimal?)null;
        switch (input.From)
        {
            case Origin.GivenBy given:
                return new(input.Symbol, input.Name, value, input.Text, input.Unit, "given", given.Where, null, null, null, null);
            case Origin.CitedFrom cited:
                var by = bibliography.Cite(cited.Source);
                return new(input.Symbol, input.Name, value, input.Text, input.Unit, "cited", null, by.Source, by.Locator, by.Evidence, null);
            case Origin.ComputedOn computed:
                return new(input.Symbol, input.Name, value, input.Text, input.Unit, "computed", null, null, null, null, computed.Number);
            default:
                throw new UnreachableException();
        }
    }
}
