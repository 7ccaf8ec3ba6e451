using System.Globalization;
using System.Text.RegularExpressions;

namespace SoilAdvisor.Api.Tests.Formulas;

/// <summary>One number varied, answers hidden, mistakes beside the right way.</summary>
public sealed partial class TeachingTests(Service service) : IClassFixture<Service>
{
    private const string Line = "/v1/formulas/cover-crop-plant-available-nitrogen";

    [Theory]
    [InlineData("1", false)]
    [InlineData("2", true)]
    [InlineData("50", true)]
    [InlineData("51", false)]
    [InlineData("2.5", false)]
    public async Task One_symbol_is_varied_in_a_bounded_number_of_steps(string steps, bool taken)
    {
        var reply = await service.PostAsync(Line, $$$"""{"inputs":{"n":3.5},"vary":{"symbol":"n","from":1.5,"to":3.5,"steps":{{{steps}}}}}""");

        Assert.Equal(taken ? HttpStatusCode.OK : HttpStatusCode.UnprocessableEntity, reply.Status);
        if (taken)
        {
            var varied = reply.Json["varied"]!.AsArray();
            Assert.Equal(int.Parse(steps, CultureInfo.InvariantCulture), varied.Count);
            // PNW 636: none at 1.5 % N, 35 lb a ton at 3.5 %.
            Assert.Equal((0m, 35m), ((decimal)varied[0]!["result"]!, (decimal)varied[^1]!["result"]!));
        }
    }

    [Fact]
    public async Task A_value_outside_the_limits_is_refused_in_its_own_row()
    {
        var reply = await service.PostAsync(Line, """{"inputs":{"n":3.5},"vary":{"symbol":"n","from":3.5,"to":20,"steps":2}}""");

        Assert.Equal(35m, (decimal)reply.Json["varied"]![0]!["result"]!);
        Assert.Equal("formula-inputs", (string?)reply.Json["varied"]![1]!["refused"]!["code"]);
    }

    public static TheoryData<string, string> Calculations => new()
    {
        { "/v1/formulas/moisture-by-drying", """{"inputs":{"W":10.7,"D":2.3}}""" },
        { "/v1/mistakes/total-for-available", """{"inputs":{"N":81,"t":3.2,"f":0.25}}""" },
        { "/v1/ratings", Requests.Ratings().ToJsonString() },
        { "/v1/lime", Requests.Lime().ToJsonString() },
        { "/v1/plans", Requests.Plan().ToJsonString() },
    };

    [Theory]
    [MemberData(nameof(Calculations))]
    public async Task Hidden_answers_stand_nowhere_on_the_work_sheet(string address, string body)
    {
        var key = Lines((await service.PostAsync(address + "?working=true", body)).Json).ToList();
        var answers = key.Select(l => l["result"]?["value"]?.ToJsonString()).OfType<string>().Where(n => n.Count(char.IsAsciiDigit) >= 5)
            .Except(key.SelectMany(l => l["inputs"]!.AsArray()).Where(i => (string?)i!["from"] != "computed").Select(i => i!["value"]?.ToJsonString()).OfType<string>())
            .ToList();
        foreach (var type in new[] { "application/json", "text/html", "text/markdown" })
        {
            var sheet = await service.PostAsync(address + "?answers=hidden", body, accept: type);

            Assert.Equal((HttpStatusCode.OK, type), (sheet.Status, sheet.MediaType));
            var numbers = Number().Matches(sheet.Text).Select(m => m.Value).ToHashSet();
            Assert.DoesNotContain(answers, numbers.Contains);
        }

        var blank = Lines((await service.PostAsync(address + "?answers=hidden", body)).Json).ToList();
        Assert.NotEmpty(blank);
        Assert.All(blank, l => Assert.True(l["result"]!["value"] is null && l["result"]!["text"] is null));
    }

    [Fact]
    public async Task An_unknown_mistake_is_answered_with_the_nearest()
    {
        var reply = await service.PostAsync("/v1/mistakes/elemen-for-oxide", """{"inputs":{}}""");

        Assert.Equal((HttpStatusCode.NotFound, "unknown-mistake"), (reply.Status, reply.Errors.Single().Code));
        Assert.Contains("element-for-oxide", reply.Errors.Single().Suggestion, StringComparison.Ordinal);
    }

    // Every line of working, wherever it stands.
    private static IEnumerable<JsonObject> Lines(JsonNode? node) => node switch
    {
        JsonObject line when line.ContainsKey("inputs") && line.ContainsKey("formula") && line["result"] is JsonObject => [line],
        JsonObject members => members.SelectMany(m => Lines(m.Value)),
        JsonArray entries => entries.SelectMany(Lines),
        _ => [],
    };

    [GeneratedRegex(@"-?\d+(\.\d+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Number();
}
