using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>
/// How far the rates of a bed may move before a ceiling or a largest rate is passed. Amounts are measured one after the other, and each
/// uses up room for the next.
/// </summary>
internal sealed class SpreadingRoom
{
    private readonly MaterialModel model;
    private readonly MassPerArea[] rates;

    public SpreadingRoom(MaterialModel model, IReadOnlyList<MassPerArea> amounts) => (this.model, rates) = (model, [.. amounts]);

    /// <summary>The most and the least that a decision may become, and what holds it at the most.</summary>
    /// <param name="index">The decision, by its place in the model.</param>
    public (MassPerArea Least, MassPerArea Most, string HeldBy) Of(int index)
    {
        var variable = model.Variables[index];
        var (least, most, heldBy) = (default(MassPerArea), variable.Most, variable.Cap?.Reason ?? "its largest single rate");
        foreach (var shared in model.SharedLimits.Where(s => s.Counts(variable)))
        {
            var others = Enumerable.Range(0, rates.Length).Where(i => i != index && shared.Counts(model.Variables[i])).Select(i => rates[i]).Aggregate(default(MassPerArea), (a, b) => a + b);
            Hold(shared.Most - others, variable.Cap?.Reason ?? "its largest single rate, over the plantings of one day");
        }

        foreach (var requirement in model.Requirements.Where(r => r.Ceiling is not null && r.Counts(variable.PlantingIndex)))
        {
            var share = variable.Share(requirement.Nutrient);
            var room = requirement.Ceiling!.Value - Supply(requirement);
            if (share > 0)
            {
                Hold(rates[index] + (room * (1 / share)), requirement.CeilingReason ?? $"a limit on {requirement.Nutrient.Words()}");
            }
            else if (share < 0)
            {
                // What ties nitrogen up holds another material's nitrogen below its ceiling: less of it is not safer.
                least = MassPerArea.Larger(least, rates[index] + (room * (1 / share)));
            }
        }

        // The solver keeps to a limit to about one part in a million; what is planned may always be spread.
        return (least < rates[index] ? least : rates[index], MassPerArea.Larger(most, rates[index]), heldBy);

        void Hold(MassPerArea limit, string reason)
        {
            if (limit < most)
            {
                (most, heldBy) = (limit, reason);
            }
        }
    }

    /// <summary>Records what was measured out.</summary>
    /// <param name="index">The decision.</param>
    /// <param name="rate">Its rate as measured.</param>
    public void Set(int index, MassPerArea rate) => rates[index] = rate;

    private MassPerArea Supply(Requirement requirement) => Enumerable.Range(0, rates.Length)
        .Where(i => requirement.Counts(model.Variables[i].PlantingIndex))
        .Select(i => rates[i] * model.Variables[i].Share(requirement.Nutrient))
        .Aggregate(default(MassPerArea), (a, b) => a + b);
}
