using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>The acidity of the sum: what the laboratory printed, else what its own buffer says, else none where the soil is not acid.</summary>
internal static class CationAcidity
{
    public static Answer<Found<TBasis>> Of<TBasis>(CationQuestion question, CationBasis<TBasis> basis)
        where TBasis : ISoilBasis
    {
        if (question.Measured(Analyte.Acidity) is { } printed)
        {
            return Printed(printed, basis);
        }

        if (question.Test.Of(Analyte.BufferPh) is { Amount.Kind: not AmountKind.Missing } buffer)
        {
            return ByBuffer(question, basis, buffer);
        }

        var none = question.Rules.Limits.NoAcidityFromPh;
        if (question.Test.Of(Analyte.Ph)!.Amount is not { Kind: not AmountKind.Below } ph || ph.Number < none.Value)
        {
            return Answer<Found<TBasis>>.Refused(
                "buffer-missing",
                Invariant($"The soil pH is {question.Test.Of(Analyte.Ph)!.Amount} and the soil test has neither a buffer pH nor an acidity: acidity fills part of the exchange, and nobody can say how much."),
                "Ask the laboratory for the buffer pH with the buffer's name, or for the exchangeable acidity.");
        }

        question.Assume("no-buffer-in-neutral-soil", Invariant($"The soil pH is {ph} and the report has no buffer pH, which laboratories skip in soil that needs no lime; no acidity is counted from pH {none.Value}."), none.Source);
        return Answer<Found<TBasis>>.Given(new Found<TBasis>(default, "none counted: no buffer pH, and the soil is not acid", Origin.Given("no acidity is counted"), none.Source));
    }

    private static Answer<Found<TBasis>> Printed<TBasis>(Reading printed, CationBasis<TBasis> basis)
        where TBasis : ISoilBasis => printed.Unit == basis.Unit
        ? Answer<Found<TBasis>>.Given(new Found<TBasis>(Charge<TBasis>.FromMilliequivalents((double)printed.Amount.Number), "the laboratory's own acidity", Origin.Given(printed.Where), Citation.CommonPractice))
        : Answer<Found<TBasis>>.Refused(
            "cation-basis-mixed",
            $"The acidity is printed in {Words.Units.IdOf(printed.Unit)}; these cations are counted in {TBasis.Unit}. The two differ by the density of the sample and do not add.",
            "Ask the laboratory for cations and acidity on one basis.");

    private static Answer<Found<TBasis>> ByBuffer<TBasis>(CationQuestion question, CationBasis<TBasis> basis, Reading buffer)
        where TBasis : ISoilBasis
    {
        if (buffer.Method.Procedure is not { } named)
        {
            return Answer<Found<TBasis>>.Refused(
                "buffer-name-missing",
                "The buffer pH has no buffer name. Mehlich, SMP, Sikora and Adams-Evans start at different values: the same number means different acidity.",
                "Ask the laboratory which buffer it used, or for the exchangeable acidity.");
        }

        var rules = question.Rules.Buffers;
        if (rules.FirstOrDefault(r => r.Buffer == named) is not { } rule)
        {
            return Answer<Found<TBasis>>.Refused(
                "buffer-not-covered",
                $"No rule held here turns the {NameOf(named)} buffer into acidity. Covered: {string.Join(", ", rules.Select(r => NameOf(r.Buffer)))}.",
                "Ask the laboratory for the exchangeable acidity, and enter it as acidity.");
        }

        if (buffer.Amount.Kind != AmountKind.Measured)
        {
            return Answer<Found<TBasis>>.Refused("buffer-open", $"The buffer pH is reported as {buffer.Amount}; acidity needs the number.", "Ask the laboratory for the measured buffer pH.");
        }

        return basis.AcidityOf(buffer, rule, question).Select(charge =>
        {
            if (buffer.Amount.Number >= rule.Start)
            {
                question.Assume("buffer-at-start", Invariant($"The {NameOf(named)} buffer pH {buffer.Amount} is at or above {rule.Start}, where it counts no acidity; acidity is taken as 0, not below."), rule.Source);
            }

            return new Found<TBasis>(charge, $"the {NameOf(named)} buffer", Origin.Line(question.Working?.LastLine ?? 0), rule.Source);
        });
    }

    private static string NameOf(Procedure buffer) => Words.ProceduresOf(Analyte.BufferPh)!.IdOf(buffer);

    /// <summary>Acidity with where it comes from.</summary>
    internal sealed record Found<TBasis>(Charge<TBasis> Charge, string Words, Origin From, Citation Source)
        where TBasis : ISoilBasis;
}
