using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Cations;

/// <summary>One soil test held against the rules, with the assumptions that collect on the way.</summary>
internal sealed class CationQuestion(SoilTest test, CationRules rules, MilliequivalentWeights weights, WorkingSheet? working)
{
    public SoilTest Test => test;

    public CationRules Rules => rules;

    public MilliequivalentWeights Weights => weights;

    public WorkingSheet? Working => working;

    public List<Assumption> Assumptions { get; } = [];

    public void Assume(string code, string text, Citation source) => Assumptions.Add(new Assumption(code, text, source));

    public Reading? Measured(Analyte analyte) => test.Of(analyte) is { Amount.Kind: AmountKind.Measured } reading ? reading : null;
}
