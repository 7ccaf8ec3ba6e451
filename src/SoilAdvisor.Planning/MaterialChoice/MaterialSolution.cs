using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>What to spread, and which floors it does not reach.</summary>
/// <param name="Amounts">Rate of each variable, in the order of the model.</param>
/// <param name="Missed">What each requirement's floor is missed by, in the order of the model; zero where it is met.</param>
internal sealed record MaterialSolution(IReadOnlyList<MassPerArea> Amounts, IReadOnlyList<MassPerArea> Missed)
{
    /// <summary>True when every floor is met.</summary>
    public bool MeetsAll => Missed.All(m => m.IsZero);

    /// <summary>Nothing spread, nothing missed.</summary>
    /// <param name="model">The model.</param>
    public static MaterialSolution Nothing(MaterialModel model) =>
        new(new MassPerArea[model.Variables.Count], new MassPerArea[model.Requirements.Count]);
}
