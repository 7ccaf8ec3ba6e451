namespace SoilAdvisor.Agronomy.Mistakes;

/// <summary>How far a mistake leads astray, in the unit of the result.</summary>
/// <param name="Right">The right result.</param>
/// <param name="Mistaken">The result with the mistake.</param>
public readonly record struct MistakeSize(double Right, double Mistaken)
{
    /// <summary>Mistaken less right.</summary>
    public double Difference => Mistaken - Right;

    /// <summary>The difference in percent of the right result; null where that is zero.</summary>
    public double? Percent => Right == 0 ? null : Difference / Right * 100;
}
