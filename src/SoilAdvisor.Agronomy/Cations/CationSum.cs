using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>The sum itself, on one basis.</summary>
internal static class CationSum
{
    public static Answer<CationBalance> Of<TBasis>(CationQuestion question, CationBasis<TBasis> basis)
        where TBasis : ISoilBasis
    {
        var working = question.Working;
        var cations = new List<(Analyte Cation, Charge<TBasis> Charge, Origin From)>();
        foreach (var cation in new[] { Analyte.Ca, Analyte.Mg, Analyte.K, Analyte.Na })
        {
            var reading = cation == Analyte.Na ? basis.Sodium(question) : question.Measured(cation)!;
            if (reading is null)
            {
                continue;
            }

            if (!basis.ChargeOf(reading, question).TryGet(out var charge, out var refusal))
            {
                return Answer<CationBalance>.Refused(refusal);
            }

            cations.Add((cation, charge, reading.Unit == basis.Unit ? Origin.Given(reading.Where) : Origin.Line(working?.LastLine ?? 0)));
        }

        return CationAcidity.Of(question, basis).Then(acidity => Balance(question, basis, cations, acidity));
    }

    private static Answer<CationBalance> Balance<TBasis>(
        CationQuestion question,
        CationBasis<TBasis> basis,
        List<(Analyte Cation, Charge<TBasis> Charge, Origin From)> cations,
        CationAcidity.Found<TBasis> acidity)
        where TBasis : ISoilBasis
    {
        var working = question.Working;
        var sodium = cations.Count > 3 ? cations[3].Charge : (Charge<TBasis>?)null;
        var bases = basis.Sum(cations[0].Charge, cations[1].Charge, cations[2].Charge, sodium, working, [.. cations.Select(c => c.From), Origin.Given("sodium is not counted")]);
        var basesLine = Origin.Line(working?.LastLine ?? 0);
        var capacity = basis.Capacity.Of((bases, acidity.Charge), working, basesLine, acidity.From);
        if (capacity.Milliequivalents == 0)
        {
            return Answer<CationBalance>.Refused("no-cations", "Calcium, magnesium, potassium and acidity are all zero; there is no exchange to divide.", "Check the report.");
        }

        var capacityLine = Origin.Line(working?.LastLine ?? 0);
        var shares = cations.Select(c => new CationShare(c.Cation, c.Charge.Milliequivalents, basis.Saturation.Of((c.Charge, capacity), working, c.From, capacityLine))).ToList();
        var acid = basis.Saturation.Of((acidity.Charge, capacity), working, acidity.From, capacityLine);
        var whole = basis.Saturation.Of((bases, capacity), working, basesLine, capacityLine);
        double? ratio = cations[1].Charge.Milliequivalents == 0 ? null : basis.Ratio.Of((cations[0].Charge, cations[1].Charge), working, cations[0].From, cations[1].From).Value;
        if (acidity.Charge.Milliequivalents == 0)
        {
            question.Assume("no-acidity-counted", "Bases fill the whole of this sum because no acidity is counted; the base saturation of 100 % says nothing more than that.", Citation.OurArithmetic);
        }

        question.Assume("sum-not-displacement", "The exchange capacity is a sum. Lime or ash spread lately, gypsum and salts in the soil count in it as calcium, magnesium or potassium.", Citation.CommonPractice);
        return Answer<CationBalance>.Given(new CationBalance(
            question.Weights,
            TBasis.Unit,
            shares,
            new AcidityShare(acidity.Charge.Milliequivalents, acid, acidity.Words, acidity.Source),
            bases.Milliequivalents,
            capacity.Milliequivalents,
            whole,
            ratio,
            [.. question.Rules.References.Where(r => r.Extractant == question.Test.Of(Analyte.Ca)!.Method.Extractant)],
            CationExtremes.Of(question, shares),
            question.Rules.Trials,
            question.Assumptions));
    }
}
