using System.Globalization;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;
using UnitsNet;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>Measures out what one bed gets: lime never above the plan, the rest within every ceiling and largest rate.</summary>
internal sealed class BedMeasuring(FieldMeasures measures, FarmShelf shelf)
{
    /// <summary>Lime first, dose by dose, then the materials in the order of the plan.</summary>
    /// <param name="bed">The bed as planned.</param>
    /// <param name="chosen">The choice that the plan was made of.</param>
    public IEnumerable<CarriedMaterial> Of(BedPlan bed, MaterialPlan chosen) => [.. Lime(bed), .. Materials(bed, chosen)];

    // Lime goes before anything else on its bed.
    private static DateOnly? LimeBy(BedPlan bed, OfferedMaterial stone) => new[]
    {
        bed.Bed.Plantings.Select(p => p.Planted).Where(d => d is not null).Min()?.AddDays(-stone.WaitBeforeSowingDays),
        bed.Applications.Select(a => a.SpreadBy).Where(d => d is not null).Min(),
    }.Where(d => d is not null).Min();

    private IEnumerable<CarriedMaterial> Lime(BedPlan bed)
    {
        if (bed.Lime?.Chosen is not { } lime)
        {
            yield break;
        }

        var share = lime.Rate.IsZero ? 0 : lime.Supplied[Nutrient.CalciumCarbonate].PoundsPerAcre / lime.Rate.PoundsPerAcre;
        for (var i = 0; i < lime.Doses.Each.Count; i++)
        {
            var dose = lime.Doses.Each[i];
            var planned = dose.Rate.On(bed.Bed.Area);
            var amount = MeasuringOut.For(planned, default, planned, VolumeMeasures.DensityOf(lime.Offered.Material), measures);
            var change = MassPerArea.Of(amount.Measured - amount.Planned, bed.Bed.Area) * share;
            shelf.Take(lime.Offered.Material.Id, amount.Measured - amount.Planned);
            yield return new CarriedMaterial(
                lime.Offered,
                i == 0 ? LimeBy(bed, lime.Offered) : null,
                i,
                lime.Doses.Each.Count == 1 ? null : DoseWords(dose, i, lime.Doses.Each.Count),
                new MeasuredSpread(bed.Bed.Id, null, dose.Rate, amount, share > 0 && !change.IsZero ? [new SupplyChange(Nutrient.CalciumCarbonate, change)] : [], HeldBy(amount, "the lime requirement")));
        }
    }

    private IEnumerable<CarriedMaterial> Materials(BedPlan bed, MaterialPlan chosen)
    {
        var room = new SpreadingRoom(chosen.Model, chosen.Solution.Amounts);
        var dressing = bed.StructureDressing is { IsGiven: true, Value: var asked }
            ? bed.Applications.FirstOrDefault(a => a.Offered.Material.Id == asked.Offered.Material.Id && a.Rate == asked.Rate)
            : null;
        foreach (var application in bed.Applications)
        {
            // Compost for structure was set before the choice, at its own limit: it is only ever rounded down.
            if (ReferenceEquals(application, dressing))
            {
                yield return Carried(application, Measured(application, default, application.PerBed), "the limit of compost for structure", bed.Bed, chosen.Model);
                continue;
            }

            var index = Enumerable.Range(0, chosen.Model.Variables.Count)
                .First(i => chosen.Model.Variables[i].Offered.Material.Id == application.Offered.Material.Id && chosen.Model.Variables[i].PlantingIndex == application.PlantingIndex);
            var (least, most, heldBy) = room.Of(index);
            var (lightest, heaviest) = (least.On(bed.Bed.Area), most.On(bed.Bed.Area));
            if (shelf.Beyond(application.Offered.Material.Id) is { } beyond && application.PerBed + beyond < heaviest)
            {
                (heaviest, heldBy) = (application.PerBed + beyond, "what the farm has and buys");
            }

            var amount = Measured(application, lightest, heaviest);
            room.Set(index, MassPerArea.Of(amount.Measured, bed.Bed.Area));
            yield return Carried(application, amount, heldBy, bed.Bed, chosen.Model);
        }
    }

    private MeasuredAmount Measured(MaterialApplication application, Mass least, Mass most)
    {
        var amount = MeasuringOut.For(application.PerBed, least, most, VolumeMeasures.DensityOf(application.Offered.Material), measures);
        shelf.Take(application.Offered.Material.Id, amount.Measured - amount.Planned);
        return amount;
    }

    private CarriedMaterial Carried(MaterialApplication application, MeasuredAmount amount, string limit, Bed bed, MaterialModel model) => new(
        application.Offered,
        application.SpreadBy,
        null,
        null,
        new MeasuredSpread(bed.Id, application.PlantingIndex, application.Rate, amount, Changes(application, amount, bed.Area, model), HeldBy(amount, limit)));

    private static List<SupplyChange> Changes(MaterialApplication application, MeasuredAmount amount, Area area, MaterialModel model)
    {
        var change = MassPerArea.Of(amount.Measured - amount.Planned, area);
        return change.IsZero
            ? []
            :
            [
                .. model.Requirements
                    .Where(r => r.AsksForSomething && r.Counts(application.PlantingIndex))
                    .Select(r => r.Nutrient)
                    .Distinct()
                    .Where(n => application.Offered.Analysis.Share(n) > 0)
                    .Select(n => new SupplyChange(n, change * application.Offered.Analysis.Share(n))),
            ];
    }

    // A limit is named only where it decided: without it the amount would have been rounded up.
    private string? HeldBy(MeasuredAmount amount, string limit)
    {
        var free = MeasuringOut.For(amount.Planned, default, amount.Planned * 2, amount.Density, measures);
        return free.Measured > amount.Measured ? limit : null;
    }

    private static string DoseWords(LimeDose dose, int index, int of)
    {
        var place = string.Create(CultureInfo.InvariantCulture, $"dose {index + 1} of {of}");
        return (index, dose.Date, dose.MonthsFrom) switch
        {
            (0, _, _) => place,
            (_, { } day, _) => string.Create(CultureInfo.InvariantCulture, $"{place}, not before {day:yyyy-MM-dd}"),
            (_, _, > 0 and var months) => string.Create(CultureInfo.InvariantCulture, $"{place}, at least {months} months after the first"),
            (_, _, 0) => $"{place}, on top after the first was turned under",
            _ => $"{place}, after a new soil test",
        };
    }
}
