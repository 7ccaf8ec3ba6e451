using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What the ways to a lime requirement share: the soil, the target, and the assumptions that they collect.</summary>
internal sealed class LimeQuestion(SoilTest test, TargetPh target, decimal ph, string phWhere, WorkingSheet? working)
{
    public const double PoundsInShortTon = 2000;

    public SoilTest Test => test;

    public TargetPh Target => target;

    public decimal Ph => ph;

    public Origin PhFrom { get; } = Origin.Given(phWhere);

    public Origin TargetFrom { get; } = target.Crop is null ? Origin.Given("target pH of the request") : Origin.From(target.Source);

    public WorkingSheet? Working => working;

    public List<Assumption> Assumptions { get; } = [];

    public void Assume(string code, string text, Citation source) => Assumptions.Add(new Assumption(code, text, source));

    public LimeRequirement Answer(string method, LimeAmount lime, decimal printed, string unit, string basis, Length depth, Citation source) =>
        new(method, lime, printed, unit, basis, depth, target, ph, Assumptions, source);

    /// <summary>The answer of a published method from its own printed rate, with what that rate counts.</summary>
    public LimeRequirement AnswerOf(LimeMethod method, MassPerArea printed)
    {
        if (method.Basis is LimeBasis.GroundLimestone { StatedNeutralisingValue: null })
        {
            Assume("lime-basis", $"{method.Title} counts {method.Basis.Words} without printing its neutralising value; its rate is taken as pure calcium carbonate and corrected for the stone.", method.Source);
        }

        return Answer(method.Id, method.Basis.Of(printed), (decimal)(printed.PoundsPerAcre / method.PoundsInUnit), method.Unit, method.Basis.Words, method.Depth, method.Source);
    }
}
