using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>
/// The exchange capacity by the sum of cations and what fills it. All of it is information: no saturation and no ratio rates a soil or sets
/// a rate here.
/// </summary>
/// <param name="Weights">The set of milliequivalent weights used.</param>
/// <param name="Unit">Unit of every charge: meq/100g, or meq/100cm3 for a laboratory that scoops.</param>
/// <param name="Cations">Calcium, magnesium, potassium and, by mass and where reported, sodium.</param>
/// <param name="Acidity">Acidity.</param>
/// <param name="Bases">Sum of the bases, in <paramref name="Unit"/>.</param>
/// <param name="Capacity">Exchange capacity by the sum, in <paramref name="Unit"/>.</param>
/// <param name="BaseSaturation">Bases as a part of the capacity.</param>
/// <param name="CalciumToMagnesium">On charge; null where no magnesium was found.</param>
/// <param name="References">Printed ranges for this extractant; empty for none.</param>
/// <param name="Warnings">Published extremes that were met; empty for none.</param>
/// <param name="Trials">What trials found about chasing ratios; stands beside every balance.</param>
/// <param name="Assumptions">What was assumed.</param>
public sealed record CationBalance(
    MilliequivalentWeights Weights,
    string Unit,
    IReadOnlyList<CationShare> Cations,
    AcidityShare Acidity,
    double Bases,
    double Capacity,
    Saturation BaseSaturation,
    double? CalciumToMagnesium,
    IReadOnlyList<ReferenceSaturation> References,
    IReadOnlyList<CationWarning> Warnings,
    IReadOnlyList<RatioTrial> Trials,
    IReadOnlyList<Assumption> Assumptions);
