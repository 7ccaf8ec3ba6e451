using SoilAdvisor.Agronomy.Climate;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>
/// Whether a cover crop lives through the farm's winter: the temperature that kills it, where one was read, against the zone's coldest night; else the
/// zone it is hardy to; else, with monthly lows, whether even an average night kills it.
/// </summary>
internal static class WinterFates
{
    public static (WinterFate Fate, string Why, Citation Source) Of(CoverCrop cover, FarmClimate climate)
    {
        if (cover.IsFrostTender)
        {
            return (WinterFate.DiesOfFrost, "Frost kills it.", cover.Kill?.Source ?? Citation.CommonPractice);
        }

        var zone = cover.ValueOf("hardiness-zone") is { Figure: not null } held ? held : null;
        if (cover.Kill is { } kill && (zone is null || kill.Source.Evidence == Evidence.Seen || zone.Source.Evidence != Evidence.Seen))
        {
            return ByKill(kill, climate);
        }

        if (zone is null)
        {
            return (WinterFate.Uncertain, "How much cold it stands is not held.", cover.Source);
        }

        return climate.Zone is { } farm
            ? ByZone(zone, farm)
            : (WinterFate.Uncertain, $"Hardy to zone {zone.Shown}; your hardiness zone was not given.", zone.Source);
    }

    private static (WinterFate, string, Citation) ByZone(CoverCropValue zone, HardinessZone farm) => farm.Number switch
    {
        var n when n >= zone.Most => (WinterFate.Lives, $"Hardy to zone {zone.Shown}; yours is {farm}: it usually lives through winter.", zone.Source),
        var n when n < zone.Least => (WinterFate.DiesInWinter, $"Hardy to zone {zone.Shown}; yours is {farm}: winter usually kills it.", zone.Source),
        _ => (WinterFate.Uncertain, $"Hardy to zone {zone.Shown}; yours is {farm}: it may live or die.", zone.Source),
    };

    private static (WinterFate, string, Citation) ByKill(CoverCropValue kill, FarmClimate climate)
    {
        var limit = $"Dies at about {kill.Shown} °F";
        if (climate.Zone is { } farm)
        {
            var coldest = $"the coldest night of an average year in zone {farm} has {PlainNumber.Of(farm.ColdestFrom.DegreesFahrenheit)} to {PlainNumber.Of(farm.ColdestTo.DegreesFahrenheit)} °F";
            return ((double)kill.Least!.Value, (double)kill.Most!.Value) switch
            {
                var (_, most) when most < farm.ColdestFrom.DegreesFahrenheit => (WinterFate.Lives, $"{limit}; {coldest}: it usually lives through winter.", kill.Source),
                var (least, _) when least > farm.ColdestTo.DegreesFahrenheit => (WinterFate.DiesInWinter, $"{limit}; {coldest}: winter usually kills it.", kill.Source),
                _ => (WinterFate.Uncertain, $"{limit}; {coldest}: it may live or die.", kill.Source),
            };
        }

        return FirstNightAtOrBelow(kill, climate, new DateOnly(2001, 7, 1)) is not null
            ? (WinterFate.DiesInWinter, $"{limit}, and your average winter night is as cold: winter kills it.", kill.Source)
            : (WinterFate.Uncertain, $"{limit}; your hardiness zone was not given.", kill.Source);
    }

    /// <summary>The first day after a day whose average night is cold enough to kill; null when none of the next twelve months is, or lows are not known.</summary>
    public static DateOnly? FirstNightAtOrBelow(CoverCropValue kill, FarmClimate climate, DateOnly from) =>
        climate.Temperatures?.Normals is { HasExtremes: true } normals
            ? Enumerable.Range(0, 365).Select(from.AddDays).Cast<DateOnly?>().FirstOrDefault(d => normals.On(d!.Value).Low.DegreesFahrenheit <= (double)kill.Figure!.Value)
            : null;
}
