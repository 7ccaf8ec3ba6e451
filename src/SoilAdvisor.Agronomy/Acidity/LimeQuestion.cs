using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What the ways to a lime requirement share: the soil, the target, and the assumptions that they collect.</summary>
internal sealed class LimeQuestion(SoilTest test, TargetPh target, WaterPh ph, string? region, RecentLime? recent, IEnumerable<Assumption> assumptions, WorkingSheet? working)
{
    public SoilTest Test => test;

    public TargetPh Target => target;

    public decimal Ph => ph.Value;

    public string? Region => region;

    public RecentLime? Recent => recent;

    public Origin PhFrom => ph.From;

    public Origin TargetFrom { get; } = target.Crop is null ? Origin.Given("target pH of the request") : Origin.From(target.Source);

    public WorkingSheet? Working => working;

    public List<Assumption> Assumptions { get; } = [.. assumptions];

    /// <summary>The same question with assumptions of its own, to try a method that may refuse.</summary>
    public LimeQuestion Again() => new(test, target, ph, region, recent, Assumptions, working);

    public void Assume(string code, string text, Citation source) => Assumptions.Add(new Assumption(code, text, source));

    public LimeRequirement Answer(string method, LimeAmount lime, decimal printed, string unit, string basis, Length depth, Citation source) =>
        new(method, lime, printed, unit, basis, depth, target, ph.Value, Assumptions, source);

    /// <summary>The answer of a published method from its own printed rate, with what that rate counts.</summary>
    public LimeRequirement AnswerOf(LimeMethod method, MassPerArea printed)
    {
        if (method.Basis is LimeBasis.GroundLimestone { StatedNeutralisingValue: null })
        {
            Assume("lime-basis", $"{method.Title} counts {method.Basis.Words} without printing its neutralising value; its rate is taken as pure calcium carbonate and corrected for the stone.", method.Source);
        }

        if (method.Source.Evidence == Evidence.FromMemory)
        {
            Assume("lime-method-recalled", $"{method.Title} is recalled from its publication, which was not read again: check the rate with your laboratory before you spread.", method.Source);
        }

        if (method.IsRough)
        {
            Assume("lime-rough", $"This rate is rough: {method.Title} goes by texture and pH alone, without a buffer. Spread half, wait half a year, and test again.", method.Source);
        }

        return Answer(method.Id, method.Basis.Of(printed), (decimal)(printed.PoundsPerAcre / method.One.PoundsPerAcre), method.Unit, method.Basis.Words, method.Depth, method.Source);
    }
}
