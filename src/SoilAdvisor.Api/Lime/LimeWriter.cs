using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Plans;
using UnitsNet;

namespace SoilAdvisor.Api.Lime;

/// <summary>Writes lime out.</summary>
internal static class LimeWriter
{
    public static LimePlanAnswer? Write(LimePlan? lime, Area? area, string areaBasis, Calculation calculation) => lime is null
        ? null
        : new LimePlanAnswer(
            Write(lime.Requirement, area, areaBasis, calculation),
            [.. lime.Choices.Select(c => Write(c, area, areaBasis, calculation))],
            lime.Chosen?.Offered.Material.Id);

    public static RequirementAnswer Write(LimeRequirement requirement, Area? area, string areaBasis, Calculation calculation) => new(
        Units.Rounded((double)requirement.PrintedValue),
        requirement.PrintedUnit,
        requirement.Basis,
        requirement.Method,
        requirement.SoilPh,
        requirement.Target.Value,
        requirement.Target.Crop,
        calculation.Units.Of(requirement.Depth),
        RateAnswer.Of(requirement.Rate.Amount, area, areaBasis, calculation.Units),
        calculation.Cite(requirement.Source));

    public static LimeChoiceAnswer Write(LimeChoice choice, Area? area, string areaBasis, Calculation calculation) => new(
        choice.Offered.Material.Id,
        choice.Offered.Material.Name,
        RateAnswer.Of(choice.Rate, area, areaBasis, calculation.Units),
        choice.PerBed is { } mass ? calculation.Units.Of(mass) : null,
        [.. choice.Doses.Select(calculation.Units.PerArea)],
        ApplicationWriter.Write(choice.Volume, calculation),
        MoneyAnswer.Of(choice.Cost),
        choice.Reasons,
        ApplicationWriter.Shares(choice.Offered.Analysis, calculation),
        calculation.Cite(Citation.OurArithmetic));
}
