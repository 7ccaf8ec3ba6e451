using System.Globalization;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Beds;

/// <summary>Puts the choice of materials for one bed into words that the programme can solve.</summary>
internal sealed class BedModel
{
    /// <summary>Nitrogen that may come along with phosphate and potash where none is needed. Ours, printed.</summary>
    public const double IncidentalNitrogenPoundsPerAcre = 10;

    /// <summary>Room above a need printed as one number. Ours, printed.</summary>
    public const double RoomAboveOneNumber = 1.1;

    private static readonly Nutrient[] Unwanted = [Nutrient.AvailableN, Nutrient.TotalP2O5, Nutrient.K2O, Nutrient.Mg, Nutrient.S];

    private readonly Bed bed;
    private readonly BedLime lime;
    private readonly PhosphorusLimit phosphorus;
    private readonly IReadOnlyList<PlantingFloor> floors;
    private readonly StructureDressing? dressing;
    private readonly FarmLimits limits;
    private readonly List<Assumption> assumptions;

    /// <summary>The model of a bed.</summary>
    /// <param name="bed">The bed.</param>
    /// <param name="lime">Its lime, which counts before anything else.</param>
    /// <param name="phosphorus">How much phosphate may come along.</param>
    /// <param name="floors">Needs less credits.</param>
    /// <param name="limits">What the farm allows.</param>
    /// <param name="dressing">Compost for structure, spread before the first planting whatever is needed; null for none.</param>
    public BedModel(Bed bed, BedLime lime, PhosphorusLimit phosphorus, IReadOnlyList<PlantingFloor> floors, FarmLimits limits, StructureDressing? dressing = null)
    {
        (this.bed, this.lime, this.phosphorus, this.limits) = (bed, lime, phosphorus, limits);
        this.dressing = dressing;
        FromDressing = dressing?.Supplied ?? NutrientVector.Zero;
        this.floors = dressing is null ? floors : [.. floors.Select(LessDressing)];
        assumptions = [.. phosphorus.Assumptions];
        Requirements = [.. NitrogenOfEachPlanting(), .. SeasonFloors(), .. Ceilings()];
    }

    /// <summary>Floors and ceilings that materials have to keep.</summary>
    public IReadOnlyList<Requirement> Requirements { get; }

    /// <summary>What the dressing for structure brings, which lowers every floor and ceiling.</summary>
    public NutrientVector FromDressing { get; }

    /// <summary>Ceilings of the farm that lime, compost for structure and earlier spreading have passed already; materials then bring none of that nutrient.</summary>
    public IReadOnlyList<Shortfall> PassedCeilings =>
    [
        .. limits.Ceilings.Where(c => Taken(c.Nutrient) > c.Most).Select(c => new Shortfall(
            c.Nutrient,
            null,
            Taken(c.Nutrient) - c.Most,
            true,
            string.Create(CultureInfo.InvariantCulture, $"Lime, compost for structure and what was spread since the sample bring {Taken(c.Nutrient).PoundsPerAcre:0.#} lb/acre of {c.Nutrient.Words()} against your limit of {c.Most.PoundsPerAcre:0.#} lb/acre ({c.Reason}). No other material that holds it is planned. Choose another lime, or raise the limit."))),
    ];

    /// <summary>What was assumed on the way.</summary>
    public IReadOnlyList<Assumption> Assumptions => assumptions;

    /// <summary>The programme for a set of materials.</summary>
    /// <param name="offered">The materials.</param>
    /// <param name="priced">True when money is minimised.</param>
    /// <param name="leftOut">Receives why listed materials were left out; null for none.</param>
    public MaterialModel For(IReadOnlyList<OfferedMaterial> offered, bool priced, ISet<string>? leftOut = null)
    {
        var spreadable = new Spreadable(bed, lime, phosphorus, floors, Requirements);
        var variables = dressing is null ? spreadable.Of(offered) : [.. spreadable.Of(offered).Select(Left).Where(v => !v.Most.IsZero)];
        leftOut?.UnionWith(spreadable.Reasons);
        return new MaterialModel(variables, Requirements, Excesses(), SharedLimits(variables), priced)
        {
            ExcessPenalty = (double)(limits.ExcessPenalty?.Value ?? (decimal)MaterialModel.ExcessBurden),
        };
    }

    // The dressing has used up a part of what may be spread of its material at once.
    private MaterialVariable Left(MaterialVariable variable) => variable.PlantingIndex == 0 && variable.Offered.Material.Id == dressing?.Offered.Material.Id
        ? variable with { Most = MassPerArea.Larger(variable.Most - dressing.Rate, default) }
        : variable;

    private MassPerArea Left(MassPerArea most, OfferedMaterial material, bool countsFirst) => countsFirst && material.Material.Id == dressing?.Offered.Material.Id
        ? MassPerArea.Larger(most - dressing.Rate, default)
        : most;

    private IEnumerable<Requirement> NitrogenOfEachPlanting()
    {
        for (var k = 0; k < bed.Plantings.Count; k++)
        {
            if (floors.FirstOrDefault(f => f.Nutrient == Nutrient.AvailableN && f.PlantingIndex == k) is not { } floor)
            {
                continue;
            }

            var high = floor.OneNumber ? floor.High * RoomAboveOneNumber : floor.High;
            var incidental = MassPerArea.FromPoundsPerAcre(IncidentalNitrogenPoundsPerAcre);
            if (floor.OneNumber)
            {
                Assume("nitrogen-room", "The nitrogen need is printed as one number; up to 10 % more is allowed. The room is ours.");
            }

            if (high < incidental)
            {
                Assume("incidental-nitrogen", string.Create(CultureInfo.InvariantCulture, $"Where a crop needs less, up to {IncidentalNitrogenPoundsPerAcre} lb/acre of nitrogen may come along with phosphate or potash; the figure is ours."));
            }

            yield return new Requirement(Nutrient.AvailableN, k, floor.Low, MassPerArea.Larger(high, incidental), floor.OneNumber ? "a tenth above the printed need" : "the high end of the printed need");
        }
    }

    private IEnumerable<Requirement> SeasonFloors() =>
        floors.Where(f => f.Nutrient != Nutrient.AvailableN).GroupBy(f => f.Nutrient).Select(g => new Requirement(g.Key, 0, FloorOf(g.Key), null, null));

    private IEnumerable<Requirement> Ceilings()
    {
        if (phosphorus.Most is { } most)
        {
            yield return new Requirement(Nutrient.TotalP2O5, null, null, MassPerArea.Larger(most - Taken(Nutrient.TotalP2O5), default), phosphorus.Reason);
        }

        foreach (var ceiling in limits.Ceilings)
        {
            yield return new Requirement(ceiling.Nutrient, null, null, MassPerArea.Larger(ceiling.Most - Taken(ceiling.Nutrient), default), ceiling.Reason);
        }

        yield return new Requirement(Nutrient.CalciumCarbonate, null, null, MassPerArea.Larger(lime.Left - FromDressing[Nutrient.CalciumCarbonate], default), "materials may raise the pH no further than the lime requirement");
    }

    // On the ground already, or fixed before materials are chosen.
    private MassPerArea Taken(Nutrient nutrient) => SpreadSinceSample.Of(bed)[nutrient] + lime.Supplied[nutrient] + FromDressing[nutrient];

    // What materials must still bring once the lime has brought its share.
    private MassPerArea FloorOf(Nutrient nutrient)
    {
        var needed = floors.Where(f => f.Nutrient == nutrient).Select(f => f.Low).Aggregate(default(MassPerArea), (a, b) => a + b);
        return MassPerArea.Larger(needed - lime.Supplied[nutrient] - (nutrient == Nutrient.AvailableN ? default : FromDressing[nutrient]), default);
    }

    // Nitrogen of the dressing counts for the first planting; the other nutrients for the season, where the floors are summed.
    private PlantingFloor LessDressing(PlantingFloor floor)
    {
        if (floor.Nutrient != Nutrient.AvailableN || floor.PlantingIndex != 0)
        {
            return floor;
        }

        var brought = MassPerArea.Larger(FromDressing[Nutrient.AvailableN], default);
        return floor with { Low = MassPerArea.Larger(floor.Low - brought, default), High = MassPerArea.Larger(floor.High - brought, default) };
    }

    private IReadOnlyList<Excess> Excesses() =>
        [.. Unwanted.Select(n => new Excess(n, FloorOf(n == Nutrient.TotalP2O5 ? Nutrient.AvailableP2O5 : n)))];

    private List<SharedLimit> SharedLimits(IReadOnlyList<MaterialVariable> variables) =>
    [
        .. from day in Enumerable.Range(0, bed.Plantings.Count).Where(k => bed.Plantings[k].Planted is not null).GroupBy(k => bed.Plantings[k].Planted)
           where day.Count() > 1
           from material in variables.Select(v => v.Offered).DistinctBy(o => o.Material.Id)
           select new SharedLimit(material.Material.Id, [.. day], Left(material.LargestSingleRate, material, day.Contains(0))),
        .. from material in bed.Plantings.Count > 1 ? variables.Select(v => v.Offered).DistinctBy(o => o.Material.Id) : []
           let cap = SeasonCap.Of(material, bed)
           where cap is not null
           select new SharedLimit(material.Material.Id, [.. Enumerable.Range(0, bed.Plantings.Count)], Left(cap.Left, material, true)),
    ];

    private void Assume(string code, string text)
    {
        if (assumptions.TrueForAll(a => a.Code != code))
        {
            assumptions.Add(new Assumption(code, text, Citation.OurJudgement));
        }
    }
}
