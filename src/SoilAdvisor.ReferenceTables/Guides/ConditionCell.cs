using System.Text.RegularExpressions;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Guides;

/// <summary>
/// The conditions cell of a class: comparisons joined by semicolons, such as <c>pH>=6.1;pH&lt;6.6;cec>5</c>. Those of one analyte make one span.
/// </summary>
/// <param name="Conditions">The spans, in the order in which they are first named.</param>
/// <param name="Faults">What is wrong with the cell, in words; empty when it can be used.</param>
internal sealed partial record ConditionCell(IReadOnlyList<ScaleCondition> Conditions, IReadOnlyList<string> Faults)
{
    public const string Column = "conditions";

    public static ConditionCell Of(TableRow row)
    {
        var (spans, faults) = (new List<ScaleCondition>(), new List<string>());
        foreach (var part in row.Parts(Column))
        {
            if (Comparison().Match(part) is not { Success: true } match || !Words.Analytes.Ids.Contains(match.Groups["analyte"].Value))
            {
                faults.Add($"\"{part}\" is not a condition. Write an analyte, a comparison and a plain number, such as pH>=6.1; join several by semicolons.");
                continue;
            }

            var analyte = Words.Analytes.Read(match.Groups["analyte"].Value).Value;
            var at = spans.FindIndex(s => s.Analyte == analyte);
            var span = at < 0 ? new ScaleCondition(analyte, null, false, null, false) : spans[at];
            var (isLower, included) = (match.Groups["sign"].Value[0] == '>', match.Groups["sign"].Value.Length == 2);
            if ((isLower ? span.From : span.To) is not null)
            {
                faults.Add($"{match.Groups["analyte"].Value} has two {(isLower ? "lower" : "upper")} ends. Keep the one that is meant.");
                continue;
            }

            var end = decimal.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
            span = isLower ? span with { From = end, FromIncluded = included } : span with { To = end, ToIncluded = included };
            if (at < 0)
            {
                spans.Add(span);
            }
            else
            {
                spans[at] = span;
            }
        }

        faults.AddRange(spans.Where(IsEmpty).Select(s => $"No value lies in {s}. Write the lower end first and below the upper one."));
        return new ConditionCell(spans, faults);
    }

    private static bool IsEmpty(ScaleCondition span) => span.From > span.To || (span.From == span.To && !(span.FromIncluded && span.ToIncluded));

    [GeneratedRegex(@"^(?<analyte>[A-Za-z0-9-]+?)(?<sign>>=|<=|>|<)(?<number>[0-9]+(\.[0-9]+)?)$")]
    private static partial Regex Comparison();
}
