using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Sulfur;

/// <summary>How to lower the pH of a soil, or why not. It never stands beside lime.</summary>
/// <param name="Advised">True where sulfur is worth spreading: a crop or target that asks for acid soil, and no free lime.</param>
/// <param name="Wanted">True where the crop or the request asks for a lower pH, even where sulfur is futile or no rule reaches.</param>
/// <param name="Said">The answer in a few sentences.</param>
/// <param name="SoilPh">Soil pH in water.</param>
/// <param name="TargetPh">pH to reach.</param>
/// <param name="Used">Rule whose rate the doses are split from; null where none is spread.</param>
/// <param name="Rules">All published rules side by side, with those that do not reach this soil.</param>
/// <param name="Doses">Spreadings in order; empty where none is advised.</param>
/// <param name="FutileBefore">Sulfur that each 1 % of free lime takes before the pH moves; null where the tables hold no figure.</param>
/// <param name="Retest">Earliest day of the new soil test; null when the first day is not known.</param>
/// <param name="RetestMonths">Months to the new soil test.</param>
/// <param name="Cautions">What else to know.</param>
/// <param name="Assumptions">What was assumed.</param>
/// <param name="Source">Where the answer stands.</param>
public sealed record SulfurAdvice(
    bool Advised,
    bool Wanted,
    string Said,
    decimal SoilPh,
    decimal TargetPh,
    SulfurRule? Used,
    IReadOnlyList<SulfurRule> Rules,
    IReadOnlyList<SulfurDose> Doses,
    Rate<ElementalSulfur>? FutileBefore,
    DateOnly? Retest,
    int RetestMonths,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<Assumption> Assumptions,
    Citation Source);
