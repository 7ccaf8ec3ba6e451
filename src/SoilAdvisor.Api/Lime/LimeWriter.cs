using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Plans;
using UnitsNet;

namespace SoilAdvisor.Api.Lime;

/// <summary>Writes lime out.</summary>
internal static class LimeWriter
{
    private static readonly Nutrient[] ShownAsSupplied = [Nutrient.Ca, Nutrient.Mg, Nutrient.K2O, Nutrient.TotalP2O5, Nutrient.CalciumCarbonate];

    public static LimePlanAnswer? Write(LimePlan? lime, Area? area, string areaBasis, Calculation calculation) => lime is null
        ? null
        : new LimePlanAnswer(
            Write(lime.Requirement, area, areaBasis, calculation),
            [.. lime.Choices.Select(c => Write(c, area, areaBasis, calculation))],
            lime.Chosen?.Offered.Material.Id,
            Write(lime.Timing, calculation),
            SulfurWriter.Write(lime.Sulfur, area, areaBasis, calculation));

    public static RequirementAnswer Write(LimeRequirement requirement, Area? area, string areaBasis, Calculation calculation)
    {
        var method = calculation.Tables.LimeMethods.GetValueOrDefault(requirement.Method);
        return new RequirementAnswer(
            Units.Rounded((double)requirement.PrintedValue),
            requirement.PrintedUnit,
            requirement.Basis,
            requirement.Lime is LimeAmount.Effective ? "effective-lime" : "calcium-carbonate-equivalent",
            requirement.Method,
            method?.Title,
            method?.Institution,
            method?.Regions ?? [],
            requirement.SoilPh,
            requirement.Target.Value,
            requirement.Target.Crop,
            calculation.Units.Of(requirement.Depth),
            RateAnswer.Of(requirement.Rate.Amount, area, areaBasis, calculation.Units),
            calculation.Cite(requirement.Source));
    }

    public static LimeChoiceAnswer Write(LimeChoice choice, Area? area, string areaBasis, Calculation calculation) => new(
        choice.Offered.Material.Id,
        choice.Offered.Material.Name,
        choice.Offered.Material.Status.ToString().ToLowerInvariant(),
        RateAnswer.Of(choice.Rate, area, areaBasis, calculation.Units),
        Units.Rounded(choice.Covers * 100),
        choice.PerBed is { } mass ? calculation.Units.Of(mass) : null,
        [.. choice.Doses.Each.Select(d => Write(d, calculation))],
        new DoseLimitAnswer(choice.Doses.Limit?.Id, choice.Doses.Said, calculation.Cite(choice.Doses.Source)),
        Units.Rounded(choice.Offered.Analysis.Share(Nutrient.CalciumCarbonate) * 100),
        Write(choice.How.Effective, calculation),
        ApplicationWriter.Write(choice.Volume, calculation),
        MoneyAnswer.Of(choice.Cost),
        MoneyAnswer.Of(choice.CostPerTon),
        choice.Reasons,
        [.. ShownAsSupplied.Where(n => choice.Supplied[n] > default(MassPerArea)).Select(n => new SuppliedAnswer(n.Symbol(), RateAnswer.Of(choice.Supplied[n], area, areaBasis, calculation.Units)))],
        [.. choice.Offered.Material.Cautions.Select(c => c.Text)],
        ApplicationWriter.Shares(choice.Offered.Analysis, calculation),
        calculation.Cite(choice.How.Source));

    public static TimingAnswer? Write(LimeTiming? timing, Calculation calculation) => timing is null
        ? null
        : new TimingAnswer(timing.MonthsFrom, timing.MonthsTo, timing.Retest is { } day ? Dates.Write(day) : null, timing.Said, calculation.Cite(timing.Source));

    public static LimeExclusionAnswer Write(LimeExclusion excluded, Calculation calculation) =>
        new(excluded.Material.Id, excluded.Material.Name, excluded.Reason, [.. excluded.Material.Cautions.Select(c => c.Text)], calculation.Cite(excluded.Source));

    private static DoseAnswer Write(LimeDose dose, Calculation calculation)
    {
        var rate = calculation.Units.PerArea(dose.Rate);
        return new DoseAnswer(rate.Value, rate.Unit, dose.PerBed is { } mass ? calculation.Units.Of(mass) : null, dose.MonthsFrom, dose.MonthsTo, dose.Date is { } day ? Dates.Write(day) : null);
    }

    private static EffectiveValueAnswer? Write(EffectiveValue? value, Calculation calculation) => value is null
        ? null
        : new EffectiveValueAnswer(
            value.Index.Id,
            value.Index.Title,
            value.Index.FormulaId,
            Units.Rounded(value.Score),
            value.Index.Unit,
            Units.Rounded(value.Share.Percent),
            calculation.Cite(value.Index.Source));
}
