using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Tests.Acidity;

public sealed class LimeBasisTests
{
    // By hand: 1000 x 0.9; 1000 x 100.09 / 56.08; NV 50 means 50 % CaO, so 1000 x 0.5 x 100.09 / 56.08.
    [Theory]
    [InlineData("calcium carbonate equivalent", 1000)]
    [InlineData("CCE", 1000)]
    [InlineData(" Ag lime ", 1000)]
    [InlineData("agricultural limestone, CCE 90", 900)]
    [InlineData("calcium oxide", 1784.77)]
    [InlineData("limestone NV 50", 892.39)]
    public void Limestone_and_oxides_become_neutralising_value(string basis, double expected) =>
        Assert.Equal(expected, Assert.IsType<LimeAmount.NeutralisingValue>(Of(basis)).Rate.PoundsPerAcre, 2);

    // By hand: the grade 60-69 is taken at 65 %; one lb ENM is counted as calcium, 40 % of calcium carbonate.
    [Theory]
    [InlineData("100-score lime", EffectiveLimeIndex.OregonLimeScore, 1000)]
    [InlineData("ECCE", EffectiveLimeIndex.IowaEcce, 1000)]
    [InlineData("ENP", EffectiveLimeIndex.MinnesotaEnp, 1000)]
    [InlineData("ENM", EffectiveLimeIndex.MissouriEnm, 2500)]
    [InlineData("60-69 lime", EffectiveLimeIndex.WisconsinNeutralisingIndex, 650)]
    public void Effective_lime_stays_effective_lime_with_its_index(string basis, EffectiveLimeIndex index, double expected)
    {
        var effective = Assert.IsType<LimeAmount.Effective>(Of(basis));

        Assert.Equal(expected, effective.Rate.PoundsPerAcre, 9);
        Assert.Equal(index, effective.Index);
        Assert.Equal(expected, effective.AsPureLime.PoundsPerAcre, 9);
    }

    [Fact]
    public void Every_id_is_read_back_as_the_same_basis() => Assert.All(LimeBasis.Ids, id => Assert.Equal(id, LimeBasis.Read(id).Value.Words));

    [Fact]
    public void An_unknown_basis_is_refused_with_those_that_are_known()
    {
        var reason = LimeBasis.Read("marl").Reason;

        Assert.Equal("lime-basis-unknown", reason.Code);
        Assert.Contains("calcium carbonate equivalent", reason.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("CCE")]
    [InlineData("ECCE")]
    public void What_was_spread_is_taken_off_and_never_leaves_less_than_none(string basis)
    {
        Assert.Equal(600, Of(basis).Less(MassPerArea.FromPoundsPerAcre(400)).AsPureLime.PoundsPerAcre, 9);
        Assert.True(Of(basis).Less(MassPerArea.FromPoundsPerAcre(1400)).IsZero);
        Assert.Equal(500, Of(basis).Times(new Coefficient(0.5)).AsPureLime.PoundsPerAcre, 9);
        Assert.False(Of(basis).IsZero);
    }

    private static LimeAmount Of(string basis) => LimeBasis.Read(basis).Value.Of(MassPerArea.FromPoundsPerAcre(1000));
}
