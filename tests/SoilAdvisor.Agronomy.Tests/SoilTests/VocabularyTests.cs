using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Tests.SoilTests;

public sealed class VocabularyTests
{
    [Theory]
    [InlineData("mg/kg", ReportingUnit.MilligramsPerKilogram)]
    [InlineData(" PPM ", ReportingUnit.MilligramsPerKilogram)]
    [InlineData("lb/acre", ReportingUnit.PoundsPerAcre)]
    [InlineData("cmolc/kg", ReportingUnit.MilliequivalentsPer100Grams)]
    [InlineData("mmho/cm", ReportingUnit.DecisiemensPerMetre)]
    public void A_unit_is_read_as_laboratories_print_it(string text, ReportingUnit unit) => Assert.Equal(unit, Words.Units.Read(text).Value);

    [Fact]
    public void An_unknown_unit_is_refused_with_the_known_ones()
    {
        var refused = Words.Units.Read("mg/kgg").Reason;

        Assert.Equal("unknown-unit", refused.Code);
        Assert.Contains("mg/kg", refused.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void Milligrams_by_mass_and_by_volume_are_two_units() =>
        Assert.NotEqual(Words.Units.Read("mg/L").Value, Words.Units.Read("mg/kg").Value);

    [Fact]
    public void Every_word_of_every_list_has_an_id_that_reads_back()
    {
        AllReadBack(Words.Analytes);
        AllReadBack(Words.Extractants);
        AllReadBack(Words.Detections);
        AllReadBack(Words.Bases);
        AllReadBack(Words.Units);
        AllReadBack(Words.SoilGroups);
    }

    private static void AllReadBack<T>(Vocabulary<T> words)
        where T : struct, Enum
    {
        foreach (var value in Enum.GetValues<T>())
        {
            Assert.Equal(value, words.Read(words.IdOf(value)).Value);
        }
    }
}
