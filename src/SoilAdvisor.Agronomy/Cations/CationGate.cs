using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>Soils in which the extract holds more than the exchange, so that a sum would mislead.</summary>
internal static class CationGate
{
    /// <summary>Why the soil has no sum; null when it may have one.</summary>
    public static Refusal? Of(CationQuestion question) => Alkaline(question) ?? Calcareous(question) ?? Saline(question);

    private static Refusal? Alkaline(CationQuestion question)
    {
        var limit = question.Rules.Limits.HighestPh;
        if (question.Test.Of(Analyte.Ph) is not { Amount.Kind: not AmountKind.Missing } ph)
        {
            return new Refusal("ph-missing", "The soil test has no pH, so nobody can say whether lime in the soil counts among its cations.", "Ask the laboratory for the pH in water.");
        }

        if (ph.Method.Procedure is Procedure.PhCalciumChloride or Procedure.PhPotassiumChloride)
        {
            return new Refusal("salt-ph", Invariant($"The pH was measured in a salt solution, which reads lower than water; the limit of {limit.Value} for the sum of cations is a pH in water."), "Ask the laboratory for the pH in water.");
        }

        return ph.Amount.Number > limit.Value || (ph.Amount.Kind == AmountKind.Above && ph.Amount.Number >= limit.Value)
            ? new Refusal(
                "ph-above-cation-limit",
                Invariant($"The soil pH is {ph.Amount}. Above {limit.Value} the extract dissolves lime that is not on the exchange, so the sum of cations and every saturation would be too high in calcium."),
                "Rate calcium, magnesium and potassium by a guide. For the exchange capacity ask the laboratory for a displacement method.")
            : null;
    }

    private static Refusal? Calcareous(CationQuestion question) => question.Test.FreeLime == true
        ? new Refusal(
            "free-lime-in-cations",
            "The soil holds free lime. The extract dissolves some of it, and it would count as exchangeable calcium and magnesium.",
            "Rate calcium, magnesium and potassium by a guide. For the exchange capacity ask the laboratory for a displacement method.")
        : null;

    private static Refusal? Saline(CationQuestion question)
    {
        if (question.Test.Of(Analyte.ElectricalConductivity) is not { Amount.Kind: not AmountKind.Missing } salts)
        {
            question.Assume("salts-not-measured", "The report has no soluble salts, which the extract counts as exchangeable. In a high tunnel, after fresh compost or heavy feeding, ask for them before trusting the sum.", Citation.CommonPractice);
            return null;
        }

        var limits = question.Rules.Limits;
        var limit = salts.Method.Procedure switch
        {
            Procedure.SaltsSaturatedPaste => limits.SalineSaturatedPaste,
            Procedure.Salts11 => limits.SalineOneToOne,
            Procedure.Salts12 => limits.SalineOneToTwo,
            _ => new[] { limits.SalineSaturatedPaste, limits.SalineOneToOne, limits.SalineOneToTwo }.MinBy(l => l.Value)!,
        };
        if (salts.Method.Procedure is null)
        {
            question.Assume("salts-extract-not-said", Invariant($"The report does not say in which extract the salts were measured; they are held against the strictest limit, {limit.Value} dS/m."), Citation.OurJudgement);
        }

        return salts.Amount.Number > limit.Value || (salts.Amount.Kind == AmountKind.Above && salts.Amount.Number >= limit.Value)
            ? new Refusal(
                "saline-soil",
                Invariant($"Soluble salts are {salts.Amount} dS/m; above {limit.Value} dS/m in this extract the salts of the soil water count as exchangeable and the sum of cations is too high."),
                "Find where the salts come from, leach where drainage allows, and test again.")
            : null;
    }
}
