using System.Text.Json;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Rates every sample of a lab file.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class RateVerb(Screen screen) : ServiceVerb<RateSettings, InputFile?>(screen)
{
    /// <inheritdoc />
    protected override InputFile? Read(RateSettings settings, Errand errand) => errand.Read(settings.LabFile);

    /// <inheritdoc />
    protected override Task<int> Ask(RateSettings settings, InputFile? input, Errand errand, Connection connection, CancellationToken stop) => Samples.Each(
        input!,
        settings,
        $"v1/ratings{settings.Query}",
        soilTest => Members.Of(("guide", settings.Guide), ("region", settings.Region), ("subregion", settings.Subregion), ("crop", settings.Crop), ("manured", settings.Manured is { } manured ? manured == "yes" : null), ("beside", Listed(settings.Beside)), ("conversions", Listed(settings.Convert)), ("soilTest", soilTest)),
        RatingScreen.Draw,
        errand,
        connection,
        stop);

    private static JsonArray? Listed(string? names) => names is null
        ? null
        : [.. names.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(n => (JsonNode)n)];
}
