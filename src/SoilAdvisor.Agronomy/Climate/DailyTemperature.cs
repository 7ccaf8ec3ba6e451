using UnitsNet;

namespace SoilAdvisor.Agronomy.Climate;

/// <summary>Low and high of a day.</summary>
/// <param name="Low">Lowest air temperature.</param>
/// <param name="High">Highest; not below the low.</param>
public sealed record DailyTemperature(Temperature Low, Temperature High)
{
    /// <summary>Mean of low and high.</summary>
    public Temperature Mean => Temperature.FromDegreesFahrenheit((Low.DegreesFahrenheit + High.DegreesFahrenheit) / 2);
}
