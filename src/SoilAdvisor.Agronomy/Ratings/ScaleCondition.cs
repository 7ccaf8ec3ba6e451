using System.Globalization;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// A span that another value of the same soil test must lie in for a scale to apply, for example zinc limits printed for a span of soil pH.
/// pH is pH in water, exchange capacity counts in meq/100 g, organic matter in percent; an extracted nutrient counts by the extractant and in the
/// unit of the scale itself. A value that was not reported, or was measured otherwise, meets no condition.
/// </summary>
/// <param name="Analyte">The other value; never the one that is rated.</param>
/// <param name="From">Lower end; null for open.</param>
/// <param name="FromIncluded">Whether the lower end itself belongs to the span.</param>
/// <param name="To">Upper end; null for open.</param>
/// <param name="ToIncluded">Whether the upper end itself belongs to the span.</param>
public sealed record ScaleCondition(Analyte Analyte, decimal? From, bool FromIncluded, decimal? To, bool ToIncluded)
{
    /// <summary>Whether the soil test meets it.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="scale">The scale that asks.</param>
    public bool IsMetBy(SoilTest test, RatingScale scale) => AmountIn(test, scale) is { } amount && Holds(amount);

    /// <summary>The test's value as the condition counts it; null where it was not reported, or not by a method that the condition takes.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="scale">The scale that asks.</param>
    public Amount? AmountIn(SoilTest test, RatingScale scale)
    {
        if (test.Of(Analyte) is not { Amount.Kind: not AmountKind.Missing } reading || !IsMeasuredAsAsked(reading.Method, scale))
        {
            return null;
        }

        return ReadingConversion.To(reading, UnitOn(scale), test.PoundsPerAcreFactor).TryGet(out var converted, out _) ? converted.Amount : null;
    }

    /// <summary>Unit in which its ends stand on a scale.</summary>
    /// <param name="scale">The scale that asks.</param>
    public ReportingUnit UnitOn(RatingScale scale) => Analyte switch
    {
        Analyte.Ph or Analyte.BufferPh => ReportingUnit.PhUnits,
        Analyte.CationExchangeCapacity or Analyte.Acidity => ReportingUnit.MilliequivalentsPer100Grams,
        Analyte.OrganicMatter => ReportingUnit.Percent,
        Analyte.ElectricalConductivity => ReportingUnit.DecisiemensPerMetre,
        _ => scale.Unit,
    };

    /// <summary>In words without the unit, for example "pH from 6.1 to below 6.6".</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Words.Analytes.IdOf(Analyte)}{(From is { } from ? $" {(FromIncluded ? "from" : "above")} {from}" : "")}{(To is { } to ? $" {(ToIncluded ? "to" : "to below")} {to}" : "")}");

    private bool IsMeasuredAsAsked(Method method, RatingScale scale) => Analyte switch
    {
        Analyte.Ph => PhInWater.Is(method),
        _ => Words.ProceduresOf(Analyte) is not null || Analyte == Analyte.Acidity || method.Extractant == scale.Method.Extractant,
    };

    // "Less than 30" meets a span only when every such value lies in it.
    private bool Holds(Amount amount) => amount.Kind switch
    {
        AmountKind.Below => From is null && amount.Number <= To,
        AmountKind.Above => To is null && amount.Number >= From,
        _ => (From is not { } from || (FromIncluded ? amount.Number >= from : amount.Number > from))
            && (To is not { } to || (ToIncluded ? amount.Number <= to : amount.Number < to)),
    };
}
