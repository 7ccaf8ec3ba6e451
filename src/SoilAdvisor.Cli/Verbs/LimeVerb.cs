using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Materials;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>The lime requirement of every sample of a lab file.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class LimeVerb(Screen screen) : ServiceVerb<LimeSettings, (InputFile? LabFile, JsonNode? Materials)>(screen)
{
    /// <inheritdoc />
    protected override (InputFile? LabFile, JsonNode? Materials) Read(LimeSettings settings, Errand errand)
    {
        if (settings.Crop is null && settings.TargetPh is null)
        {
            errand.Complaints.Add(new("--crop", "Neither a crop nor a target pH is named.", "Add for example --crop cabbage or --target-ph 6.5."));
        }

        var lab = errand.Read(settings.LabFile);
        return (lab, settings.Materials is { } path && errand.Read(path) is { } shelf ? MaterialList.Read(shelf, errand.Places, errand.Complaints) : null);
    }

    /// <inheritdoc />
    protected override Task<int> Ask(LimeSettings settings, (InputFile? LabFile, JsonNode? Materials) input, Errand errand, Connection connection, CancellationToken stop) => Samples.Each(
        input.LabFile!,
        settings,
        $"v1/lime{settings.Query}",
        soilTest => Members.Of(
            ("method", settings.Method),
            ("guide", settings.Guide),
            ("region", settings.Region),
            ("soilTest", soilTest),
            ("targetPh", settings.TargetPh),
            ("crop", settings.Crop),
            ("methods", settings.Compare is { } compare ? new JsonArray([.. compare.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(m => (JsonNode)m)]) : null),
            ("depth", settings.Depth is { } depth ? new JsonObject { ["value"] = depth, ["unit"] = "in" } : null),
            ("incorporation", settings.Surface ? "surface" : null),
            ("date", settings.Date),
            ("recentLime", Recent(settings)),
            ("area", settings.Area is { } area ? new JsonObject { ["value"] = area, ["unit"] = "sq ft" } : null),
            ("materials", input.Materials?.DeepClone())),
        LimeScreen.Draw,
        errand,
        connection,
        stop);

    private static JsonObject? Recent(LimeSettings settings) => settings.RecentDate is null && settings.RecentLime is null && settings.RecentMaterial is null
        ? null
        : Members.Of(
            ("amount", settings.RecentLime is { } tons ? new JsonObject { ["value"] = tons, ["unit"] = "ton/acre" } : null),
            ("material", settings.RecentMaterial),
            ("date", settings.RecentDate));
}
