namespace SoilAdvisor.Planning.FarmWide;

/// <summary>Rates for every group and what is bought for them.</summary>
/// <param name="Rates">Pounds per acre, by group and by variable of its model.</param>
/// <param name="Bought">Pounds bought of each product, in the order of the model; whole packs where it is sold so.</param>
/// <param name="Objective">What was minimised, in money.</param>
/// <param name="Bound">Proven: no plan can be below this.</param>
/// <param name="Ended">How the search ended.</param>
internal sealed record FarmSolution(IReadOnlyList<double[]> Rates, double[] Bought, double Objective, double Bound, SearchEnd Ended)
{
    /// <summary>Share of the objective by which a better plan could still beat this one; 0 is proven best.</summary>
    public double Gap => Objective <= 0 ? 0 : Math.Max(0, (Objective - Bound) / Objective);
}
