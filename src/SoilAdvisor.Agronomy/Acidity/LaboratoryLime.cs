using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The lime rate that the laboratory printed, where no method can read the buffer.</summary>
internal static class LaboratoryLime
{
    /// <summary>The requirement by the laboratory's rate; null where it printed none.</summary>
    public static Answer<LimeRequirement>? Of(LimeQuestion question)
    {
        var printed = question.Test.LabRecommendations.FirstOrDefault(r => r.What.Contains("lime", StringComparison.OrdinalIgnoreCase));
        if (printed is null)
        {
            return null;
        }

        if (printed.Value < 0 || LimeRateUnits.One(printed.Unit) is not { } unit)
        {
            return Answer<LimeRequirement>.Refused(
                "lime-unit-unknown",
                Invariant($"The laboratory's lime rate {printed.Value} {printed.Unit} has a unit that is not known, or lies below zero."),
                $"Give it in one of: {string.Join(", ", LimeRateUnits.Ids)}.");
        }

        var rate = unit * (double)printed.Value;
        if (!LimeBasis.Read(printed.Basis ?? LimeBasis.Pure.Words).TryGet(out var basis, out var unknown))
        {
            return Answer<LimeRequirement>.Refused(unknown);
        }

        if (printed.Basis is null || basis is LimeBasis.GroundLimestone { StatedNeutralisingValue: null })
        {
            question.Assume("lime-basis", $"The laboratory's lime rate ({printed.Basis ?? "basis not printed"}) is taken as calcium carbonate equivalent.", Citation.CommonPractice);
        }

        question.Assume("laboratory-target", "The laboratory's own target pH and depth are not known; its rate is taken as it stands.", Citation.CommonPractice);
        var depth = question.Test.Depth?.To ?? Length.FromInches(6);
        question.Working?.LookUp(
            "laboratory-lime-rate",
            "Lime rate that the laboratory printed",
            Invariant($"{printed.What}: {printed.Value} {printed.Unit}"),
            [new WorkingInput("LR", "the laboratory's lime rate", (double)printed.Value, null, printed.Unit, Origin.Given("the laboratory's report"))],
            Invariant($"{rate.PoundsPerAcre:0.########} lb/acre"),
            Citation.UnitDefinitions);
        return Answer<LimeRequirement>.Given(question.Answer("laboratory", basis.Of(rate), printed.Value, printed.Unit, printed.Basis ?? "not printed", depth, Citation.CommonPractice));
    }
}
