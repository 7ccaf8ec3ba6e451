using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>The formulas of one basis, so that the sum is written once and a charge by mass never meets one by volume.</summary>
internal abstract class CationBasis<TBasis>
    where TBasis : ISoilBasis
{
    /// <summary>Unit in which a printed charge of this basis is reported.</summary>
    public abstract ReportingUnit Unit { get; }

    public abstract Formula<(Charge<TBasis> Bases, Charge<TBasis> Acidity), Charge<TBasis>> Capacity { get; }

    public abstract Formula<(Charge<TBasis> Part, Charge<TBasis> Capacity), Saturation> Saturation { get; }

    public abstract Formula<(Charge<TBasis> Calcium, Charge<TBasis> Magnesium), Coefficient> Ratio { get; }

    /// <summary>The charge of a reading that was measured as a number.</summary>
    public abstract Answer<Charge<TBasis>> ChargeOf(Reading reading, CationQuestion question);

    /// <summary>The sum of the bases; sodium is null where it is not counted.</summary>
    public abstract Charge<TBasis> Sum(Charge<TBasis> calcium, Charge<TBasis> magnesium, Charge<TBasis> potassium, Charge<TBasis>? sodium, WorkingSheet? working, params ReadOnlySpan<Origin> from);

    /// <summary>The acidity that a buffer of this basis found.</summary>
    public abstract Answer<Charge<TBasis>> AcidityOf(Reading buffer, BufferAcidityRule rule, CationQuestion question);

    /// <summary>Sodium as this basis counts it: the reading, or why it is left out.</summary>
    public abstract Reading? Sodium(CationQuestion question);
}
