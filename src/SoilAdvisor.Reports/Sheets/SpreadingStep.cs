using System.Globalization;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>One walk over a bed with one material: a dose of lime, or an application. Lime comes first because the plan fixes it first.</summary>
internal sealed record SpreadingStep(
    int Order,
    Material Material,
    string Purpose,
    MassPerArea Rate,
    Mass Weight,
    VolumeMeasure? Volume,
    Money? Cost,
    string When,
    DateOnly? SpreadBy,
    int? PlantingIndex,
    IReadOnlyList<Citation> Sources)
{
    public static IReadOnlyList<SpreadingStep> Of(BedPlan bed)
    {
        var steps = new List<SpreadingStep>();
        if (bed.Lime?.Chosen is { } lime)
        {
            for (var i = 0; i < lime.Doses.Each.Count; i++)
            {
                steps.Add(Dose(bed, lime, bed.Lime.Requirement.Source, i));
            }
        }

        var doses = steps.Count;
        steps.AddRange(bed.Applications.Select((a, i) => new SpreadingStep(
            doses + i + 1, a.Offered.Material, a.Purpose, a.Rate, a.PerBed, a.Volume, a.Cost, a.When, a.SpreadBy, a.PlantingIndex,
            [.. Citations.Of(a.Offered), .. a.Volume is { } volume ? new[] { volume.Source } : []])));
        return steps;
    }

    // Volume and cost of a single dose are its share of the whole.
    private static SpreadingStep Dose(BedPlan bed, LimeChoice lime, Citation requirement, int index)
    {
        var dose = lime.Doses.Each[index];
        var share = lime.Rate.IsZero ? 0 : dose.Rate.PoundsPerAcre / lime.Rate.PoundsPerAcre;
        var several = lime.Doses.Each.Count > 1;
        var name = several ? string.Create(CultureInfo.InvariantCulture, $"lime, dose {index + 1} of {lime.Doses.Each.Count}") : "lime";
        var wait = lime.Offered.WaitBeforeSowingDays > 0
            ? string.Create(CultureInfo.InvariantCulture, $"at least {lime.Offered.WaitBeforeSowingDays} days before sowing")
            : "before sowing";
        return new SpreadingStep(
            index + 1,
            lime.Offered.Material,
            name,
            dose.Rate,
            dose.Rate.On(bed.Bed.Area),
            lime.Volume is { } volume ? volume with { Value = volume.Value * share } : null,
            lime.Cost is { } cost ? cost with { Value = cost.Value * (decimal)share } : null,
            index == 0 ? wait : $"{LaterDose.When(dose)}, never on top of the first; {wait}",
            null,
            null,
            [requirement, lime.How.Source, lime.Doses.Source, .. Citations.Of(lime.Offered), .. lime.Volume is { } measure ? new[] { measure.Source } : []]);
    }
}
