using System.Globalization;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>Holds a soil test against a guide's regulatory limits. A limit on something the report does not hold by the same method is passed over.</summary>
internal static class CeilingCheck
{
    public static CeilingFinding? Of(Guide guide, GuideCeiling ceiling, SoilTest test)
    {
        if (AmountIn(guide, ceiling, test) is not { } found)
        {
            return null;
        }

        var state = State(ceiling, found.Amount);
        var what = ceiling.Index is null ? Words.Analytes.IdOf(ceiling.Analyte) : guide.Indices.First(i => i.Id == ceiling.Index).Formula.Title;
        var unit = Words.Units.IdOf(ceiling.Unit);
        var message = string.Create(
            CultureInfo.InvariantCulture,
            $"{what} {found.Amount} {unit}; {ceiling.Jurisdiction} sets a limit at {(ceiling.LimitIncluded ? "" : "more than ")}{ceiling.Limit} {unit}{(ceiling.Condition is { } condition ? $" ({condition})" : "")}. {Outcome(ceiling, state)} Ask the local authority: its rule decides.");
        return new CeilingFinding(ceiling, found.Amount, state, message, found.Assumptions);
    }

    private static string Outcome(GuideCeiling ceiling, FindingState state) => state switch
    {
        FindingState.Act => $"It is reached: {ceiling.WhatItAsks}.",
        FindingState.Pass => "It is not reached.",
        _ => "The report does not say on which side the soil lies.",
    };

    private static (Amount Amount, IReadOnlyList<Assumption> Assumptions)? AmountIn(Guide guide, GuideCeiling ceiling, SoilTest test)
    {
        if (ceiling.Index is { } id)
        {
            var index = guide.Indices.First(i => i.Id == id);
            return index.IsReported(test) && index.Value(test, null).TryGet(out var value, out _) ? (Amount.Measured(value.Value), value.Assumptions) : null;
        }

        return test.Of(ceiling.Analyte) is { Amount.Kind: not AmountKind.Missing } reading
            && ceiling.Method.Covers(reading.Method)
            && ReadingConversion.To(reading, ceiling.Unit, test.PoundsPerAcreFactor).TryGet(out var converted, out _)
            ? (converted.Amount, converted.Assumptions)
            : null;
    }

    private static FindingState State(GuideCeiling ceiling, Amount amount) => amount.Kind switch
    {
        AmountKind.Below => amount.Number <= ceiling.Limit ? FindingState.Pass : FindingState.NotDecidable,
        AmountKind.Above => amount.Number >= ceiling.Limit ? FindingState.Act : FindingState.NotDecidable,
        _ => amount.Number > ceiling.Limit || (ceiling.LimitIncluded && amount.Number == ceiling.Limit) ? FindingState.Act : FindingState.Pass,
    };
}
