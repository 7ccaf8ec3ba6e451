namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass of one form of a nutrient in a mass of dry soil. Zero by default; never negative, always finite. Nitrate and nitrate nitrogen, sulfate
/// and sulfur are types of their own.
/// </summary>
/// <typeparam name="TForm">The form counted.</typeparam>
/// <param name="Concentration">The concentration.</param>
public readonly record struct SoilContent<TForm>(SoilConcentration Concentration)
    where TForm : IForm
{
    /// <summary>Milligrams of the form per kilogram of soil.</summary>
    public double MilligramsPerKilogram => Concentration.MilligramsPerKilogram;

    /// <summary>From milligrams of the form per kilogram of soil.</summary>
    /// <param name="value">mg/kg.</param>
    public static SoilContent<TForm> FromMilligramsPerKilogram(double value) => new(SoilConcentration.FromMilligramsPerKilogram(value));
}
