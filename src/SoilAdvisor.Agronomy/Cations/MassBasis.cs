using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>By mass of soil: mg/kg, lb/acre, kg/ha and meq/100 g.</summary>
internal sealed class MassBasis : CationBasis<PerMass>
{
    public override ReportingUnit Unit => ReportingUnit.MilliequivalentsPer100Grams;

    public override Formula<(Charge<PerMass> Bases, Charge<PerMass> Acidity), Charge<PerMass>> Capacity => CationFormulas.Capacity;

    public override Formula<(Charge<PerMass> Part, Charge<PerMass> Capacity), Saturation> Saturation => CationFormulas.SaturationOf;

    public override Formula<(Charge<PerMass> Calcium, Charge<PerMass> Magnesium), Coefficient> Ratio => CationFormulas.CalciumToMagnesium;

    public override Answer<Charge<PerMass>> ChargeOf(Reading reading, CationQuestion question)
    {
        if (reading.Unit == Unit)
        {
            return Answer<Charge<PerMass>>.Given(Charge<PerMass>.FromMilliequivalents((double)reading.Amount.Number));
        }

        var weights = question.Weights;
        if (weights.Unit == ReportingUnit.PoundsPerAcre && question.Test.PoundsPerAcreFactor is { } factor && factor != 2m)
        {
            return Answer<Charge<PerMass>>.Refused(
                "weights-not-for-factor",
                Invariant($"The weights \"{weights.Title}\" count 2 lb/acre for 1 mg/kg; this laboratory counts {factor}."),
                "Leave the set of weights out, or name one in mg/kg.");
        }

        return ReadingConversion.To(reading, weights.Unit, question.Test.PoundsPerAcreFactor).Select(converted =>
        {
            foreach (var assumption in converted.Assumptions.Where(a => question.Assumptions.All(known => known.Code != a.Code)))
            {
                question.Assumptions.Add(assumption);
            }

            var (content, weight) = ((double)converted.Amount.Number, (double)weights.Of(reading.Analyte));
            var (from, cited) = (Origin.Given(reading.Where), Origin.From(weights.Source));
            return weights.Unit == ReportingUnit.PoundsPerAcre
                ? CationFormulas.ChargeByAcre.Of((MassPerArea.FromPoundsPerAcre(content), MassPerArea.FromPoundsPerAcre(weight)), question.Working, from, cited)
                : CationFormulas.ChargeByMass.Of((SoilConcentration.FromMilligramsPerKilogram(content), SoilConcentration.FromMilligramsPerKilogram(weight)), question.Working, from, cited);
        });
    }

    public override Charge<PerMass> Sum(Charge<PerMass> calcium, Charge<PerMass> magnesium, Charge<PerMass> potassium, Charge<PerMass>? sodium, WorkingSheet? working, params ReadOnlySpan<Origin> from) =>
        CationFormulas.SumOfBases.Of((calcium, magnesium, potassium, sodium ?? default), working, from);

    public override Answer<Charge<PerMass>> AcidityOf(Reading buffer, BufferAcidityRule rule, CationQuestion question) => rule.Buffer switch
    {
        Procedure.BufferAdamsEvans => Of(buffer, rule, question, LimeFormulas.AcidityAdamsEvans),
        Procedure.BufferMooreSikora => Of(buffer, rule, question, CationFormulas.AcidityMooreSikora),
        Procedure.BufferSmp => Of(buffer, rule, question, CationFormulas.AciditySmp),
        _ => Answer<Charge<PerMass>>.Refused(
            "cation-basis-mixed",
            $"The {Words.ProceduresOf(Analyte.BufferPh)!.IdOf(rule.Buffer)} buffer counts acidity in {rule.Unit}, by volume of soil; the cations are counted by mass. The two do not add.",
            "Ask the laboratory for the acidity in meq/100g, or for the cations in mg/dm3."),
    };

    public override Reading? Sodium(CationQuestion question)
    {
        if (question.Measured(Analyte.Na) is { } sodium && sodium.Method.Extractant == question.Test.Of(Analyte.Ca)?.Method.Extractant)
        {
            return sodium;
        }

        question.Assume("sodium-left-out", "No sodium was measured in the same extract; it is counted as none. In most soils it fills a few percent of the exchange at most.", Citation.CommonPractice);
        return null;
    }

    private static Answer<Charge<PerMass>> Of<TBuffer>(
        Reading buffer,
        BufferAcidityRule rule,
        CationQuestion question,
        Formula<(Coefficient PerUnit, BufferPh<TBuffer> Start, BufferPh<TBuffer> Buffer), BufferAcidity<TBuffer>> formula)
        where TBuffer : IBufferOn<PerMass> => BufferPh<TBuffer>.Of(buffer).Select(measured => Charge<PerMass>.Of(formula.Of(
            (new Coefficient((double)rule.PerUnit), new BufferPh<TBuffer>((double)rule.Start), measured),
            question.Working,
            Origin.From(rule.Source),
            Origin.From(rule.Source),
            Origin.Given(buffer.Where))));
}
