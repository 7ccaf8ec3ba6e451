using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>
/// Nitrogen that a material has released some days after it was worked in. Where release with time is published, the points are joined by
/// straight lines; where it is not, only its season's figure is known and the range before the end is open from nothing to that figure.
/// </summary>
public static class NitrogenRelease
{
    /// <summary>Days of the incubation that the season's share of quick materials comes from.</summary>
    public const int SeasonDays = 84;

    /// <summary>The release of one unit of mass by a day. It never falls with time.</summary>
    /// <param name="material">The material.</param>
    /// <param name="analysis">What it supplies in the season.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="days">Days since it was worked in; nothing before 0.</param>
    /// <param name="soil">Mean soil temperature of that time, °C; null spans the published temperatures.</param>
    /// <param name="seasonIsOver">True at the end of the harvest, where the season's figure is counted whole.</param>
    public static ReleasedSoFar By(Material material, MaterialAnalysis analysis, NitrogenTables tables, int days, decimal? soil, bool seasonIsOver)
    {
        var source = analysis.Sources.TryGetValue(Nutrient.AvailableN, out var sources) && sources.Count > 0 ? sources[^1] : Citation.OurArithmetic;
        var (seasonLow, seasonHigh) = Season(analysis);
        if (days < 0 || seasonHigh.Fraction <= 0)
        {
            return new ReleasedSoFar(default, default, "nothing is released", source);
        }

        if (tables.ClassOf(material.Id)?.Course is { } course && analysis.Nitrogen is { } content)
        {
            var points = tables.Points.Where(p => p.Course == course && (p.Material is null || p.Material == material.Id)).ToList();
            return Course(points, content, (seasonLow, seasonHigh), days, soil);
        }

        var atOnce = analysis.Nitrogen?.AtOnceLow ?? default;
        return seasonIsOver
            ? new ReleasedSoFar(seasonLow, seasonHigh, "the season's figure", source)
            : new ReleasedSoFar(Lesser(atOnce, seasonLow), seasonHigh, "no release with time is published: only the season's figure is known", source);
    }

    /// <summary>The share of organic nitrogen released by a day along a published course.</summary>
    /// <param name="points">The points of the course that hold for the material.</param>
    /// <param name="days">Days, 0 or more; from the last point on its figure stands.</param>
    /// <param name="soil">Mean soil temperature, °C; null spans the published temperatures.</param>
    public static (ShareOf<OrganicN> Low, ShareOf<OrganicN> High) OfOrganic(IReadOnlyList<ReleasePoint> points, int days, decimal? soil)
    {
        var stops = points.GroupBy(p => p.Days).OrderBy(g => g.Key).Select(g => (Days: g.Key, Ends: Stop([.. g], soil))).ToList();
        if (days <= 0)
        {
            return (default, default);
        }

        // Release is quickest at first: before the first point the high end already stands at its figure.
        var (at, low, high) = (0, default(ShareOf<OrganicN>), stops[0].Ends.High);
        foreach (var (day, ends) in stops)
        {
            var (nextLow, nextHigh) = (Larger(low, ends.Low), Larger(high, ends.High));
            if (days <= day)
            {
                return (Between(low, nextLow, days, at, day), Between(high, nextHigh, days, at, day));
            }

            (at, low, high) = (day, nextLow, nextHigh);
        }

        return (low, high);
    }

    private static ReleasedSoFar Course(IReadOnlyList<ReleasePoint> points, NitrogenContent content, (MassShare Low, MassShare High) season, int days, decimal? soil)
    {
        var last = points.Max(p => p.Days);
        var (low, high) = Of(content, OfOrganic(points, Math.Min(days, last), soil));
        var how = (IsOutside(points, soil), days > last) switch
        {
            (true, _) => "colder or warmer than any published temperature: nothing is counted on",
            (_, true) => "past the published weeks, on a line to the season's figure",
            _ => soil is null ? "over all published soil temperatures, on lines between the published points" : "on lines between the published points",
        };
        if (days > last)
        {
            var part = Math.Min(1.0, (days - last) / (double)Math.Max(1, SeasonDays - last));
            (low, high) = (Toward(low, IsOutside(points, soil) ? low : season.Low, part), Toward(high, season.High, part));
        }

        return new ReleasedSoFar(low, high, how, points[0].Source);
    }

    private static (MassShare Low, MassShare High) Of(NitrogenContent content, (ShareOf<OrganicN> Low, ShareOf<OrganicN> High) share) => (
        MassShare.FromFraction((content.OrganicLow.Fraction * share.Low.Fraction) + content.AtOnceLow.Fraction),
        MassShare.FromFraction((content.OrganicHigh.Fraction * share.High.Fraction) + content.AtOnceHigh.Fraction));

    private static (ShareOf<OrganicN> Low, ShareOf<OrganicN> High) Stop(IReadOnlyList<ReleasePoint> at, decimal? soil)
    {
        if (IsOutside(at, soil))
        {
            return (default, at.Max(p => p.High));
        }

        var warm = at.Where(p => p.Temperature is not null).OrderBy(p => p.Temperature).ToList();
        if (soil is not { } temperature || warm.Count < 2)
        {
            return (at.Min(p => p.Low), at.Max(p => p.High));
        }

        var (cold, hot) = (warm[0], warm[^1]);
        var mean = Between(cold.Low, hot.Low, temperature, cold.Temperature!.Value, hot.Temperature!.Value);
        var others = at.Where(p => p.Temperature is null).ToList();
        return (others.Select(p => p.Low).Append(mean).Min(), others.Select(p => p.High).Append(mean).Max());
    }

    private static bool IsOutside(IReadOnlyList<ReleasePoint> at, decimal? soil) =>
        soil is { } temperature && at.Any(p => p.Temperature is not null) && (temperature < at.Min(p => p.Temperature) || temperature > at.Max(p => p.Temperature));

    private static ShareOf<OrganicN> Between(ShareOf<OrganicN> first, ShareOf<OrganicN> second, decimal at, decimal firstAt, decimal secondAt) =>
        NitrogenFormulas.BetweenPoints.Of((first, second, new Coefficient((double)at), new Coefficient((double)firstAt), new Coefficient((double)secondAt)));

    private static (MassShare Low, MassShare High) Season(MaterialAnalysis analysis)
    {
        var low = analysis.Share(Nutrient.AvailableN);
        var high = analysis.High.TryGetValue(Nutrient.AvailableN, out var most) ? most : low;
        return (MassShare.FromFraction(Math.Max(0, low)), MassShare.FromFraction(Math.Max(low, high)));
    }

    // A line that only rises: what was released by the last published day is not taken back.
    private static MassShare Toward(MassShare from, MassShare to, double part) =>
        MassShare.FromFraction(from.Fraction + (Math.Max(0, to.Fraction - from.Fraction) * part));

    private static MassShare Lesser(MassShare a, MassShare b) => a.CompareTo(b) <= 0 ? a : b;

    private static ShareOf<OrganicN> Larger(ShareOf<OrganicN> a, ShareOf<OrganicN> b) => a.CompareTo(b) >= 0 ? a : b;
}
