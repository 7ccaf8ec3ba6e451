namespace SoilAdvisor.Api.Climate;

/// <summary>What is known of the climate, as received. Every part may be left out; what is then assumed is said.</summary>
internal sealed record WrittenClimate
{
    /// <summary>Mean temperature of each month.</summary>
    public WrittenMonths? MonthlyMeanTemperature { get; init; }

    /// <summary>Mean daily low of each month; with the highs it is better than the mean.</summary>
    public WrittenMonths? MonthlyLowTemperature { get; init; }

    /// <summary>Mean daily high of each month.</summary>
    public WrittenMonths? MonthlyHighTemperature { get; init; }

    public WrittenDays? Daily { get; init; }

    /// <summary>Hardiness zone, for example 6 or 6b.</summary>
    public string? HardinessZone { get; init; }

    /// <summary>Usual last frost in spring.</summary>
    public string? LastFrost { get; init; }

    /// <summary>Usual first frost in fall.</summary>
    public string? FirstFrost { get; init; }

    public WrittenDegreeDays? DegreeDays { get; init; }
}
