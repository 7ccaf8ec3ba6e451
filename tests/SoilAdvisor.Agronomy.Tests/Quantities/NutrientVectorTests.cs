using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Tests.Quantities;

public sealed class NutrientVectorTests
{
    [Fact]
    public void Each_nutrient_keeps_to_itself()
    {
        var vector = NutrientVector.Zero.With(Rate<K2O>.FromPoundsPerAcre(40)).With(Nutrient.TotalP2O5, MassPerArea.FromPoundsPerAcre(10));

        Assert.Equal(40, vector.Of<K2O>().PoundsPerAcre, 9);
        Assert.Equal(10, vector.Of<TotalP2O5>().PoundsPerAcre, 9);
        Assert.True(vector.Of<AvailableP2O5>().Amount.IsZero);
    }

    [Fact]
    public void Vectors_add_and_multiply_nutrient_by_nutrient()
    {
        var one = NutrientVector.Zero.With(Rate<AvailableN>.FromPoundsPerAcre(3)).With(Rate<Ca>.FromPoundsPerAcre(5));

        var three = (one * 2) + one;

        Assert.Equal(9, three.Of<AvailableN>().PoundsPerAcre, 9);
        Assert.Equal(15, three.Of<Ca>().PoundsPerAcre, 9);
    }

    [Fact]
    public void Every_nutrient_has_a_symbol_and_words_that_name_its_basis()
    {
        foreach (var nutrient in Enum.GetValues<Nutrient>())
        {
            Assert.NotEmpty(nutrient.Symbol());
            Assert.Contains("(", nutrient.Words(), StringComparison.Ordinal);
        }
    }

    // Standard atomic weights (IUPAC 2021): P 30.973762, K 39.0983, O 15.999. Extension sheets round the factors to 2.29 and 1.20.
    [Fact]
    public void Oxides_weigh_what_their_atoms_weigh()
    {
        Assert.Equal(141.942524 / 61.947524, OxideConversions.PhosphateOfPhosphorus, 12);
        Assert.Equal(94.1956 / 78.1966, OxideConversions.PotashOfPotassium, 12);
        Assert.Equal(22.913, OxideConversions.PhosphorusToPhosphate.Of(Rate<P>.FromPoundsPerAcre(10)).PoundsPerAcre, 3);
        Assert.Equal(12.046, OxideConversions.PotassiumToPotash.Of(Rate<K>.FromPoundsPerAcre(10)).PoundsPerAcre, 3);
    }
}
