using SoilAdvisor.Agronomy.Quantities;
using UnitsNet;

namespace SoilAdvisor.Api.Answers;

/// <summary>A rate in every way that a grower reads one, with the ground it refers to.</summary>
internal sealed record RateAnswer(Quantity PerAcre, Quantity Per1000SqFt, Quantity PerHectare, Quantity? PerBed, Quantity? Area, string AreaBasis)
{
    public static RateAnswer Of(MassPerArea rate, Area? area, string areaBasis, Units units) => new(
        new Quantity(Units.Rounded(rate.PoundsPerAcre), "lb/acre"),
        new Quantity(Units.Rounded(rate.PoundsPer1000SquareFeet), "lb/1000 sq ft"),
        new Quantity(Units.Rounded(rate.KilogramsPerHectare), "kg/ha"),
        area is { } bed ? units.Of(rate.On(bed)) : null,
        area is { } ground ? units.Of(ground) : null,
        areaBasis);
}
