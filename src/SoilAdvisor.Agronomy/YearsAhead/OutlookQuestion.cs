using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>What an outlook is asked about.</summary>
/// <param name="Test">The soil test.</param>
/// <param name="Rating">Rating of its phosphorus or potassium.</param>
/// <param name="Plantings">Crops of the season, which repeat.</param>
/// <param name="Region">ISO 3166-2 code; null when not said.</param>
/// <param name="Years">How many, 1 to <see cref="Projections.MostYears"/>.</param>
/// <param name="Variability">How far results of the same ground lie apart.</param>
/// <param name="Movements">How soil tests move.</param>
public sealed record OutlookQuestion(
    SoilTest Test,
    Rating Rating,
    IReadOnlyList<Planting> Plantings,
    string? Region,
    int Years,
    Variability Variability,
    TestMovements Movements);
