using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;

namespace SoilAdvisor.Agronomy.Tests.YearsAhead;

/// <summary>Invented soil tests, balances and pounds for one unit.</summary>
internal static class InventedYears
{
    public static TestedLevel Tested(double level, double spreadPercent = 10, Extractant extractant = Extractant.BrayP1) =>
        new(extractant, SoilConcentration.FromMilligramsPerKilogram(level), CoefficientOfVariation.FromPercent(spreadPercent), "P");

    public static TestMovement<TotalP2O5> Moves(double pounds = 20, double band = 1.5, Extractant extractant = Extractant.BrayP1) =>
        new(extractant, new Coefficient(pounds), new Coefficient(band), Citation.OurJudgement, []);

    public static YearlyBalance<TotalP2O5> Yearly(double applied, double removed, double? appliedHigh = null, double once = 0) =>
        new(Rate(applied), Rate(appliedHigh ?? applied), Rate(once), Rate(once), Rate(removed));

    public static Projection Projected(double level, double applied, double removed, int years = 5, double spreadPercent = 10, double band = 1.5, double once = 0) =>
        Projections.OfPhosphorus(Tested(level, spreadPercent), Moves(band: band), Yearly(applied, removed, once: once), years).Value;

    public static Rate<TotalP2O5> Rate(double pounds) => Rate<TotalP2O5>.FromPoundsPerAcre(pounds);
}
