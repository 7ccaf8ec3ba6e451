using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A bed rich in compost holds less soil than a lime rate takes for granted: the rate goes down with the mass.</summary>
public static class LightBed
{
    /// <summary>A requirement by mass of soil, for a bed of another bulk density.</summary>
    public static Formula<(Rate<CalciumCarbonate> Rate, Density Bed, Density Usual), Rate<CalciumCarbonate>> ForDensity { get; } = new(
        "lime-for-light-bed",
        "Lime requirement for a light bed",
        "L = LR × D / U",
        Citation.OurArithmetic,
        [
            new(new Symbol("LR", "lime requirement for a mineral soil", "lb/acre", 0), x => x.Rate.PoundsPerAcre),
            new(new Symbol("D", "bulk density of the bed", "g/cm3", 0.05, 2.65), x => x.Bed.GramsPerCubicCentimeter),
            new(new Symbol("U", "bulk density that the rate takes for granted", "g/cm3", 0.5, 2), x => x.Usual.GramsPerCubicCentimeter),
        ],
        new(new Symbol("L", "lime requirement for the bed", "lb/acre"), y => y.PoundsPerAcre),
        v => (Rate<CalciumCarbonate>.FromPoundsPerAcre(v[0]), Density.FromGramsPerCubicCentimeter(v[1]), Density.FromGramsPerCubicCentimeter(v[2])),
        x => x.Rate * (x.Bed.GramsPerCubicCentimeter / x.Usual.GramsPerCubicCentimeter),
        "Proportion of masses; no publication that was read works an example.");

    /// <summary>
    /// The requirement for the bed's own bulk density where that is stated and below the usual; a denser soil is left as it is, so that no
    /// more lime goes on than the method prints. A buffer that counts acidity by volume needs no correction, and that is said.
    /// </summary>
    /// <param name="requirement">The requirement.</param>
    /// <param name="test">The soil test.</param>
    /// <param name="method">The method it came from; null for the laboratory's own rate.</param>
    /// <param name="tables">Published figures.</param>
    /// <param name="working">Receives the line; null for none.</param>
    public static LimeRequirement For(LimeRequirement requirement, SoilTest test, LimeMethod? method, LimingTables tables, WorkingSheet? working)
    {
        if (requirement.Lime.IsZero || test.BulkDensity is not { } density || tables.FigureOf("mineral-soil", "bulk-density") is not { Value: { } usual } figure || density >= usual)
        {
            return requirement;
        }

        if (method is null || method.Buffers.Contains(Procedure.BufferMehlich))
        {
            return Say(requirement, "bulk-density-not-used", Invariant($"The bulk density of {density} g/cm3 changes nothing: {(method is null ? "how the laboratory counts its own rate is not known" : $"{method.Title} counts acidity by volume of soil")}."), requirement.Source);
        }

        ForDensity.Of(
            (requirement.Rate, Density.FromGramsPerCubicCentimeter((double)density), Density.FromGramsPerCubicCentimeter((double)usual)),
            working,
            Origin.Line(working?.LastLine ?? 0),
            Origin.Given("bulk density of the soil test"),
            Origin.From(figure.Source));
        return Say(
            requirement with { Lime = requirement.Lime.Times(new Coefficient((double)(density / usual))) },
            "light-bed",
            Invariant($"The bed is light ({density} g/cm3): it holds {density / usual * 100:0} % of the soil that the rate takes for granted ({usual:0.##} g/cm3), and gets that part of the lime."),
            figure.Source);
    }

    private static LimeRequirement Say(LimeRequirement requirement, string code, string text, Citation source) =>
        requirement with { Assumptions = [.. requirement.Assumptions, new Assumption(code, text, source)] };
}
