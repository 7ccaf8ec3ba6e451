using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Tests.SoilTests;

public sealed class DoubtTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task The_lab_file_of_the_demonstration_raises_no_doubt()
    {
        var rules = Tables.Load(Tables.FindFolder(AppContext.BaseDirectory)).Cations;

        var reply = await service.PostAsync("/v1/lab-files", File.ReadAllText(Path.Combine(MarkdownBlocks.Folder, "demo", "lab.csv")), "text/csv");

        Assert.Empty(reply.Json["errors"]!.AsArray());
        var tests = reply.Json["soilTests"]!.AsArray().Select(t => new SoilTest((string)t!["id"]!, null, null, null, null, null, null, [.. t["readings"]!.AsArray().Select(ReadingOf)], [])).ToList();
        Assert.NotEmpty(tests);
        Assert.Equal([], tests.SelectMany(t => SoilTestSuspicions.Of(t, rules)).Select(s => s.Code));
    }

    [Fact]
    public async Task A_buffer_pH_that_its_buffer_cannot_show_is_refused_at_its_place_and_the_rest_stands()
    {
        var test = Requests.FullSoilTest();
        var readings = test["readings"]!.AsArray();
        var place = readings.Select((r, i) => (r, i)).Single(x => (string)x.r!["analyte"]! == "bufferPh").i;
        readings[place]!["method"] = "mehlich";
        readings[place]!["value"] = 7.2;

        var reply = await service.PostAsync("/v1/lab-files", new JsonObject { ["soilTests"] = new JsonArray(test) }.ToJsonString());

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var fault = Assert.Single(reply.Json["errors"]!.AsArray());
        Assert.Equal("buffer-above-its-start", (string)fault!["code"]!);
        Assert.Equal($"/soilTests/0/readings/{place}", (string)fault["pointer"]!);
        Assert.DoesNotContain(reply.Json["soilTests"]![0]!["readings"]!.AsArray(), r => (string)r!["analyte"]! == "bufferPh");
    }

    private static Reading ReadingOf(JsonNode? written)
    {
        var analyte = Words.Analytes.Read((string)written!["analyte"]!).Value;
        var number = written["value"]!.GetValue<decimal>();
        var method = written["extractant"] is { } extractant
            ? Method.Extracted(Words.Extractants.Read((string)extractant!).Value)
            : Method.By(written["method"] is { } named ? Words.ProceduresOf(analyte)!.Read((string)named!).Value : null);
        return new Reading(analyte, written["comparator"] is null ? Amount.Measured(number) : Amount.Below(number), Words.Units.Read((string)written["unit"]!).Value, method, "lab file");
    }
}
