using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What the ways to a lime requirement share: the soil, the target, and the assumptions that they collect.</summary>
internal sealed class LimeQuestion(SoilTest test, TargetPh target, decimal ph, string phWhere, WorkingSheet? working)
{
    public const string AsCalciumCarbonate = "calcium carbonate equivalent";
    public const double PoundsInShortTon = 2000;

    public SoilTest Test => test;

    public TargetPh Target => target;

    public decimal Ph => ph;

    public Origin PhFrom { get; } = Origin.Given(phWhere);

    public Origin TargetFrom { get; } = target.Crop is null ? Origin.Given("target pH of the request") : Origin.From(target.Source);

    public WorkingSheet? Working => working;

    public List<Assumption> Assumptions { get; } = [];

    public void Assume(string code, string text, Citation source) => Assumptions.Add(new Assumption(code, text, source));

    public LimeRequirement Answer(string method, Rate<CalciumCarbonate> rate, decimal printed, string unit, string basis, Length depth, Citation source) =>
        new(method, rate, printed, unit, basis, depth, target, ph, Assumptions, source);

    /// <summary>The answer of a published method, with the basis of its unit said.</summary>
    public LimeRequirement AnswerOf(LimeMethod method, Rate<CalciumCarbonate> rate, decimal printed)
    {
        if (method.Basis != AsCalciumCarbonate)
        {
            Assume("lime-basis", $"{method.Title} counts {method.Basis}; its rate is taken as calcium carbonate equivalent and corrected for the stone by its neutralising value.", method.Source);
        }

        return Answer(method.Id, rate, printed, method.Unit, method.Basis, method.Depth, method.Source);
    }
}
