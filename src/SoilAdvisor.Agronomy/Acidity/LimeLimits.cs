using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What a lime method is published for. Outside it there is no answer.</summary>
/// <param name="Soil">Soils it is made for.</param>
/// <param name="PhFrom">Lowest soil pH, inclusive; null for none printed.</param>
/// <param name="PhTo">Soil pH at and above which it is not used; null for none printed.</param>
/// <param name="BufferFrom">Lowest buffer pH, inclusive; null for none printed.</param>
/// <param name="BufferTo">Highest buffer pH, inclusive; null for none printed.</param>
public sealed record LimeLimits(LimeSoil Soil, decimal? PhFrom, decimal? PhTo, decimal? BufferFrom, decimal? BufferTo)
{
    /// <summary>No limits printed.</summary>
    public static LimeLimits None { get; } = new(LimeSoil.Any, null, null, null, null);

    /// <summary>Why a soil lies outside; null when it lies inside.</summary>
    /// <param name="title">Title of the method.</param>
    /// <param name="soil">Texture of the soil; null when not said, which counts as mineral.</param>
    /// <param name="ph">Soil pH on the scale of the method.</param>
    /// <param name="buffer">Buffer pH; null for a method that reads none.</param>
    public Refusal? Outside(string title, SoilGroup? soil, decimal ph, decimal? buffer)
    {
        if (Soil != LimeSoil.Any && (soil == SoilGroup.Organic) != (Soil == LimeSoil.Organic))
        {
            return new Refusal(
                "soil-outside-method",
                $"{title} is made for {(Soil == LimeSoil.Organic ? "organic" : "mineral")} soils; the texture of this one is {(soil is { } group ? Words.SoilGroups.IdOf(group) : "not named, so it counts as mineral")}.",
                "Name the texture of the soil, choose another method, or give the laboratory's lime rate.");
        }

        if (ph < PhFrom || ph >= PhTo)
        {
            return new Refusal(
                "ph-outside-method",
                Invariant($"{title} is used for a soil pH {(PhFrom is { } from ? Invariant($"from {from} ") : "")}{(PhTo is { } to ? Invariant($"below {to}") : "upward")}; the soil pH is {ph}."),
                "Choose another method, or give the laboratory's lime rate.");
        }

        return buffer < BufferFrom || buffer > BufferTo
            ? new Refusal(
                "buffer-outside-method",
                Invariant($"{title} is published for buffer pH {(BufferFrom is { } lowest ? Invariant($"from {lowest} ") : "")}{(BufferTo is { } highest ? Invariant($"to {highest}") : "upward")}; the reading is {buffer}."),
                buffer > BufferTo ? "The soil holds little reserve acidity. Ask the laboratory whether it advises any lime." : "Have the buffer pH measured again, or ask the laboratory for its lime rate.")
            : null;
    }
}
