using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Tests.Ratings;

public sealed class CalcareousSoilTests
{
    [Theory]
    [InlineData("7.4", Procedure.PhWater11, false)]
    [InlineData("7.5", Procedure.PhWater11, true)]
    [InlineData("7.5", null, true)]
    [InlineData("7.5", Procedure.PhCalciumChloride, false)]
    public void Mehlich_phosphorus_above_pH_7_4_in_water_carries_the_warning(string ph, Procedure? procedure, bool warned)
    {
        var phosphorus = InventedGuide.Phosphorus(Amount.Measured(40));
        var acidity = new Reading(Analyte.Ph, Amount.Measured(decimal.Parse(ph, System.Globalization.CultureInfo.InvariantCulture)), ReportingUnit.PhUnits, Method.By(procedure), "x");

        var rating = InventedGuide.Bins.Rate(InventedGuide.Test(phosphorus, acidity), phosphorus, default).Value;

        Assert.Equal(warned, rating.Assumptions.Any(a => a.Code == "acid-extractant-on-calcareous-soil"));
    }

    [Theory]
    [InlineData(Extractant.BrayP1, true)]
    [InlineData(Extractant.Mehlich1, true)]
    [InlineData(Extractant.Mehlich3, true)]
    [InlineData(Extractant.Olsen, false)]
    [InlineData(Extractant.ModifiedMorgan, false)]
    public void Free_lime_alone_is_enough_for_the_acid_extractants(Extractant extractant, bool warned)
    {
        var phosphorus = InventedGuide.Phosphorus(Amount.Measured(40), extractant: extractant);

        Assert.Equal(warned, CalcareousSoil.Warning(InventedGuide.Test(phosphorus) with { FreeLime = true }, phosphorus) is not null);
    }

    [Fact]
    public void Potassium_carries_no_such_warning()
    {
        var potassium = new Reading(Analyte.K, Amount.Measured(100), ReportingUnit.MilligramsPerKilogram, Method.Extracted(Extractant.Mehlich3), "x");

        Assert.Null(CalcareousSoil.Warning(InventedGuide.Test(potassium) with { FreeLime = true }, potassium));
    }
}
