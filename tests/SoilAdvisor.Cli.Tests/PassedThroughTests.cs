using SoilAdvisor.Api;
using SoilAdvisor.Cli.Tests.Processes;

namespace SoilAdvisor.Cli.Tests;

/// <summary>What the service wrote reaches the reader unchanged.</summary>
public sealed class PassedThroughTests
{
    [Fact]
    public async Task Json_is_byte_for_byte_what_the_named_service_answered()
    {
        await using var service = Host.Build(["--urls", "http://127.0.0.1:0", "--contentRoot", SoilCommand.Top]);
        await service.StartAsync();
        using var client = new HttpClient();
        var answered = await client.GetStringAsync(new Uri($"{service.Urls.First()}/v1/lime-methods"));
        var run = await SoilCommand.Run("show", "lime-methods", "--format", "json", "--server", service.Urls.First());
        Assert.True(run.ExitCode == 0, run.ToString());
        Assert.Equal(answered, run.Results);
    }

    [Fact]
    public async Task A_whole_request_file_needs_no_other_file_and_its_places_are_named()
    {
        using var folder = new ScratchFolder();
        var request = folder.File("request.json", """
            {"guide": "delaware-vegetables", "options": {"date": "2026-11-24"},
             "soilTests": [{"id": "n", "texture": "loam", "readings": [{"analyte": "P", "value": 18, "unit": "mg/kg", "extractant": "mehlich-3", "detection": "icp"}]}],
             "beds": [{"id": "1", "area": {"value": 250, "unit": "sq ft"}, "soilTest": "n", "crops": [{"crop": "cabage"}]},
                      {"id": "2", "area": {"value": 250, "unit": "sq ft"}, "soilTest": "n", "crops": [{"crop": "cabbage"}]}]}
            """);
        var run = await SoilCommand.Run("plan", request);
        Assert.True(run.ExitCode == 1, run.ToString());
        Assert.Contains("Bed 2: cabbage", run.Results, StringComparison.Ordinal);
        Assert.Contains($"{request} at /beds/0/crops/0/crop: ", run.Talk, StringComparison.Ordinal);
    }
}
