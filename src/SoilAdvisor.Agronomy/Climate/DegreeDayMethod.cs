namespace SoilAdvisor.Agronomy.Climate;

/// <summary>
/// How a day's low and high become degree-days. The same year counted by two methods differed by up to 83 % (McMaster and Wilhelm 1997), so a
/// sum without its method says nothing. Default is <see cref="DailyMean"/>.
/// </summary>
public enum DegreeDayMethod
{
    /// <summary>The mean of low and high less the base; a day whose mean is below the base counts nothing. Method 1 of McMaster and Wilhelm.</summary>
    DailyMean,

    /// <summary>A low or high below the base is first raised to the base, then the mean is taken. Method 2 of McMaster and Wilhelm.</summary>
    ExtremesRaised,

    /// <summary>The area above the base under a sine through low and high (Baskerville and Emin 1969).</summary>
    SingleSine,
}
