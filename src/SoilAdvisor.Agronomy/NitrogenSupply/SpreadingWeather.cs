namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Weather between spreading and working in.</summary>
public enum SpreadingWeather
{
    /// <summary>Not told apart.</summary>
    Average,

    /// <summary>Cool and wet: most is kept.</summary>
    CoolWet,

    /// <summary>Cool and dry.</summary>
    CoolDry,

    /// <summary>Warm and wet.</summary>
    WarmWet,

    /// <summary>Warm and dry: least is kept.</summary>
    WarmDry,
}
