using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>By volume of soil, as North Carolina counts it: mg/dm3 and meq/100 cm3, without sodium.</summary>
internal sealed class VolumeBasis : CationBasis<PerVolume>
{
    public override ReportingUnit Unit => ReportingUnit.MilliequivalentsPer100CubicCentimetres;

    public override Formula<(Charge<PerVolume> Bases, Charge<PerVolume> Acidity), Charge<PerVolume>> Capacity => CationFormulas.CapacityByVolume;

    public override Formula<(Charge<PerVolume> Part, Charge<PerVolume> Capacity), Saturation> Saturation => CationFormulas.SaturationByVolume;

    public override Formula<(Charge<PerVolume> Calcium, Charge<PerVolume> Magnesium), Coefficient> Ratio => CationFormulas.CalciumToMagnesiumByVolume;

    public override Answer<Charge<PerVolume>> ChargeOf(Reading reading, CationQuestion question)
    {
        if (reading.Unit == Unit)
        {
            return Answer<Charge<PerVolume>>.Given(Charge<PerVolume>.FromMilliequivalents((double)reading.Amount.Number));
        }

        var weights = question.Weights;
        if (weights.Unit != ReportingUnit.MilligramsPerKilogram)
        {
            return Answer<Charge<PerVolume>>.Refused(
                "weights-not-for-volume",
                $"The weights \"{weights.Title}\" are printed in {Words.Units.IdOf(weights.Unit)} and do not serve cations by volume of soil.",
                "Leave the set of weights out, or name one in mg/kg.");
        }

        return ReadingConversion.To(reading, ReportingUnit.MilligramsPerCubicDecimetre, null).Select(converted => CationFormulas.ChargeByVolume.Of(
            (
                VolumeConcentration.FromMilligramsPerCubicDecimetre((double)converted.Amount.Number),
                VolumeConcentration.FromMilligramsPerCubicDecimetre((double)weights.Of(reading.Analyte))),
            question.Working,
            Origin.Given(reading.Where),
            Origin.From(weights.Source)));
    }

    public override Charge<PerVolume> Sum(Charge<PerVolume> calcium, Charge<PerVolume> magnesium, Charge<PerVolume> potassium, Charge<PerVolume>? sodium, WorkingSheet? working, params ReadOnlySpan<Origin> from) =>
        CationFormulas.SumOfBasesByVolume.Of((calcium, magnesium, potassium), working, from);

    public override Answer<Charge<PerVolume>> AcidityOf(Reading buffer, BufferAcidityRule rule, CationQuestion question) => rule.Buffer == Procedure.BufferMehlich
        ? BufferPh<MehlichBuffer>.Of(buffer).Select(measured => Charge<PerVolume>.Of(LimeFormulas.AcidityMehlich.Of(
            (new Coefficient((double)rule.PerUnit), new BufferPh<MehlichBuffer>((double)rule.Start), measured),
            question.Working,
            Origin.From(rule.Source),
            Origin.From(rule.Source),
            Origin.Given(buffer.Where))))
        : Answer<Charge<PerVolume>>.Refused(
            "cation-basis-mixed",
            $"The {Words.ProceduresOf(Analyte.BufferPh)!.IdOf(rule.Buffer)} buffer counts acidity in {rule.Unit}, by mass of soil; the cations are counted by volume. The two do not add.",
            "Ask the laboratory for the acidity in meq/100cm3, or for the cations by mass (mg/kg).");

    public override Reading? Sodium(CationQuestion question)
    {
        question.Assume("sodium-left-out", "Sodium is left out of the sum, as North Carolina does for cations by volume of soil.", CationFormulas.SumOfBasesByVolume.Source);
        return null;
    }
}
