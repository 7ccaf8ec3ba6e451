using SoilAdvisor.Planning.FarmWide;

namespace SoilAdvisor.Planning.Tests.FarmWide;

/// <summary>What every plan of a farm keeps, counted straight from its words.</summary>
internal static class FarmLaws
{
    private const double Dust = 1e-5;

    public static void Hold(FarmModel model, FarmSolution plan)
    {
        for (var p = 0; p < model.Products.Count; p++)
        {
            var product = model.Products[p];
            var needed = Enumerable.Range(0, model.Groups.Count).Sum(g => model.Groups[g].Acres * Uses(model, plan, g, p));
            Assert.True(needed <= product.StockPounds + plan.Bought[p] + Dust, $"{product.Offered.Material.Id}: {needed} lb needed, {product.StockPounds} on hand, {plan.Bought[p]} bought.");
            if (product.PackPounds is { } pack)
            {
                Assert.Equal(Math.Round(plan.Bought[p] / pack), plan.Bought[p] / pack, 1e-6);
            }
        }

        var products = Enumerable.Range(0, model.Products.Count).Count(p => Enumerable.Range(0, model.Groups.Count).Any(g => Uses(model, plan, g, p) > Dust));
        Assert.True(products <= (model.Limits.Products ?? int.MaxValue), $"{products} products.");
        foreach (var (rates, g) in plan.Rates.Select((r, g) => (r, g)))
        {
            Assert.True(rates.Count(r => r > Dust) <= (model.Limits.ProductsPerBed ?? int.MaxValue), $"{rates.Count(r => r > Dust)} products on one bed.");
            Assert.All(rates.Where(r => r > Dust), r => Assert.True(r >= (model.Limits.SmallestRate?.PoundsPerAcre ?? 0) - Dust, $"{r} lb/acre is too little to spread."));
            foreach (var requirement in model.Groups[g].Model.Requirements.Where(r => r.Ceiling is not null))
            {
                var supplied = rates.Select((r, i) => r * model.Groups[g].Model.Variables[i].Share(requirement.Nutrient)).Sum();
                Assert.True(supplied <= requirement.Ceiling!.Value.PoundsPerAcre + 1e-4, $"{requirement.Nutrient}: {supplied} above {requirement.Ceiling.Value.PoundsPerAcre}.");
            }
        }
    }

    private static double Uses(FarmModel model, FarmSolution plan, int group, int product) =>
        plan.Rates[group].Where((_, i) => model.Groups[group].Model.Variables[i].Offered.Material.Id == model.Products[product].Offered.Material.Id).Sum();
}
