using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>
/// A published parabola from the North Carolina soil test index to a rate of P2O5 or K2O. It turns up again beyond its lowest point, where it was
/// never meant to be read: from its first zero on the rate is zero, and one that never reaches zero stays at its lowest.
/// </summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="A">Coefficient of the square; above 0.</param>
/// <param name="B">Coefficient of the index, which is subtracted; above 0.</param>
/// <param name="C">Rate at an index of 0.</param>
/// <param name="Unit">Unit of the rate as printed: lb/acre or lb/1000-sq-ft.</param>
/// <param name="Tolerance">What the publication allows either way, in the same unit; null where it prints none.</param>
/// <param name="Source">Where it stands.</param>
public sealed record QuadraticRate(string Id, decimal A, decimal B, decimal C, string Unit, decimal? Tolerance, Citation Source)
{
    /// <summary>The rate for an index.</summary>
    /// <param name="index">The laboratory's index; not below 0.</param>
    /// <param name="working">Receives the formula; null for none.</param>
    public MassPerArea RateFor(SoilIndex<NorthCarolinaTestIndex> index, WorkingSheet? working = null)
    {
        Origin cited = Origin.From(Source);
        var rate = RateFormulas.Quadratic.Of((new((double)A), new((double)B), new((double)C), index), working, cited, cited, cited, Origin.Given("soil test"));
        return Unit == "lb/1000-sq-ft" ? MassPerArea.FromPoundsPer1000SquareFeet(rate.Value) : MassPerArea.FromPoundsPerAcre(rate.Value);
    }
}
