using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.Tests.MaterialChoice;

/// <summary>The burden of given rates, computed straight from its definition.</summary>
internal static class Burden
{
    public static double Money(MaterialModel model, IReadOnlyList<double> pounds)
    {
        var cost = 0.0;
        for (var i = 0; i < pounds.Count; i++)
        {
            cost += pounds[i] * ((model.Variables[i].Offered.PricePerKilogram is { } price ? (double)price.Value * 0.45359237 : 0) + MaterialModel.MassBurden);
        }

        return cost + (MaterialModel.ExcessBurden * ExcessOf(model, pounds));
    }

    public static double ExcessOf(MaterialModel model, IReadOnlyList<double> pounds) =>
        model.Excesses.Sum(e => Math.Max(0, Supply(model, e.Nutrient, null, pounds) - e.Above.PoundsPerAcre));

    public static double Supply(MaterialModel model, Nutrient nutrient, int? planting, IReadOnlyList<double> pounds)
    {
        var supply = 0.0;
        for (var i = 0; i < pounds.Count; i++)
        {
            if (planting is null || model.Variables[i].PlantingIndex == planting)
            {
                supply += pounds[i] * model.Variables[i].Share(nutrient);
            }
        }

        return supply;
    }

    public static double[] PoundsOf(MaterialSolution solution) => [.. solution.Amounts.Select(a => a.PoundsPerAcre)];
}
