using System.Globalization;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// Free lime uses up the acid of Bray and Mehlich extractants, so that their phosphorus reads too low. Taken as present where the test says so,
/// or where pH in water is above 7.4.
/// </summary>
public static class CalcareousSoil
{
    private const decimal PhWithFreeLime = 7.4m;

    /// <summary>The warning that such a phosphorus reading carries; null where there is no cause for it.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="reading">A reading of it.</param>
    public static Assumption? Warning(SoilTest test, Reading reading)
    {
        if (reading is not { Analyte: Analyte.P, Method.Extractant: Extractant.BrayP1 or Extractant.Mehlich1 or Extractant.Mehlich3 } || Sign(test) is not { } sign)
        {
            return null;
        }

        return new Assumption(
            "acid-extractant-on-calcareous-soil",
            $"{sign}: the acid of {Words.Extractants.IdOf(reading.Method.Extractant.Value)} is used up by lime and phosphorus can read too low. Have the Olsen test done and read it by a guide for Olsen.",
            Citation.CommonPractice);
    }

    private static string? Sign(SoilTest test)
    {
        if (test.FreeLime == true)
        {
            return "The soil holds free lime";
        }

        return test.Of(Analyte.Ph) is { Amount: { Kind: AmountKind.Measured or AmountKind.Above } amount } ph && PhInWater.Is(ph.Method)
            && (amount.Number > PhWithFreeLime || (amount.Kind == AmountKind.Above && amount.Number == PhWithFreeLime))
            ? string.Create(CultureInfo.InvariantCulture, $"Soil pH is {amount}, above {PhWithFreeLime}, where free lime is likely")
            : null;
    }
}
