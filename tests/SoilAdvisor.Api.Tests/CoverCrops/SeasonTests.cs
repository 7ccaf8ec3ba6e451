namespace SoilAdvisor.Api.Tests.CoverCrops;

public sealed class SeasonTests(Service service) : IClassFixture<Service>
{
    private static JsonObject Season(string coverSeason = "{}") => new()
    {
        ["farm"] = "Invented garden",
        ["date"] = "2027-03-01",
        ["beds"] = new JsonArray(Requests.Bed("A1"), Requests.Bed("A2")),
        ["frost"] = JsonNode.Parse("""{"lastSpring":"2027-04-20","firstFall":"2027-10-20"}"""),
        ["coverSeason"] = JsonNode.Parse(coverSeason),
    };

    [Fact]
    public async Task Every_bed_has_its_cover_crop_its_days_and_its_seed()
    {
        var season = (await service.PostAsync("/v1/cover-crops/season", Season())).Json["coverSeason"]!;

        Assert.Equal(["A1", "A2"], season["stands"]!.AsArray().Select(s => (string)s!["bed"]!));
        Assert.All(season["stands"]!.AsArray(), s =>
        {
            var days = s!["tasks"]!.AsArray().Select(t => (string)t!["day"]!).ToList();
            Assert.Equal(days.Order(StringComparer.Ordinal), days);
            Assert.True(string.CompareOrdinal(days[0], (string)s["gap"]!["from"]!) >= 0);
            Assert.Equal("plant", (string)s["tasks"]!.AsArray()[^1]!["work"]!);
            Assert.Equal(s["reasons"]!.AsArray().Sum(r => (decimal)r!["points"]!), (decimal)s["points"]!);
            Assert.Equal((decimal)s["best"]![0]!["points"]!, (decimal)s["points"]!);
        });
        Assert.Equal(season["stands"]!.AsArray().Sum(s => (decimal)s!["seed"]!["value"]!), season["seed"]!.AsArray().Sum(s => (decimal)s!["needed"]!["value"]!), 3);
        Assert.True((bool)season["best"]!);
        Assert.NotEmpty(season["weights"]!.AsArray());
    }

    [Fact]
    public async Task No_frost_tender_species_stands_over_frost()
    {
        var request = Season();
        request["beds"] = new JsonArray(Requests.Bed("A1"));
        request["beds"]![0]!["gap"] = JsonNode.Parse("""{"from":"2027-10-01","to":"2028-04-20"}""");
        var tender = (await service.GetAsync("/v1/cover-crops")).Json["items"]!.AsArray().Where(c => (string)c!["season"]! == "warm").Select(c => (string)c!["id"]!).ToHashSet();

        var stand = (await service.PostAsync("/v1/cover-crops/season", request)).Json["coverSeason"]!["stands"]![0]!;

        Assert.NotNull(stand["coverCrop"]);
        Assert.DoesNotContain((string)stand["coverCrop"]!, tender);
    }

    [Fact]
    public async Task The_calendar_is_given_where_it_is_accepted()
    {
        var reply = await service.PostAsync("/v1/cover-crops/season", Season().ToJsonString(), accept: "text/calendar");

        Assert.Equal((HttpStatusCode.OK, "text/calendar"), (reply.Status, reply.MediaType));
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", reply.Text, StringComparison.Ordinal);
        Assert.Contains("DTSTAMP:20270301T000000Z\r\n", reply.Text, StringComparison.Ordinal);
        Assert.Equal(reply.Text, (await service.PostAsync("/v1/cover-crops/season", Season().ToJsonString(), accept: "text/calendar")).Text);
    }

    [Fact]
    public async Task Another_media_type_is_refused_with_what_is_offered()
    {
        var reply = await service.PostAsync("/v1/cover-crops/season", Season().ToJsonString(), accept: "text/csv");

        Assert.Equal(HttpStatusCode.NotAcceptable, reply.Status);
        Assert.Contains("text/calendar", reply.Errors.Single().Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Seed_on_hand_limits_the_beds()
    {
        var free = (await service.PostAsync("/v1/cover-crops/season", Season())).Json["coverSeason"]!;
        var cover = (string)free["stands"]![0]!["coverCrop"]!;

        var limited = (await service.PostAsync("/v1/cover-crops/season", Season($$"""{"seed":[{"coverCrop":"{{cover}}","onHand":{"value":0,"unit":"lb"},"buy":false}]}"""))).Json["coverSeason"]!;

        Assert.All(limited["stands"]!.AsArray(), s => Assert.NotEqual(cover, (string?)s!["coverCrop"]));
        Assert.Contains("not enough seed", (string)limited["stands"]![0]!["said"]!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"mostSpecies":0}""", "/coverSeason/mostSpecies", "impossible-value")]
    [InlineData("""{"mostSpecies":1.5}""", "/coverSeason/mostSpecies", "not-whole")]
    [InlineData("""{"familyGapMonths":61}""", "/coverSeason/familyGapMonths", "impossible-value")]
    [InlineData("""{"pointsPerSpecies":-1}""", "/coverSeason/pointsPerSpecies", "negative-value")]
    [InlineData("""{"seed":[{"coverCrop":"oat"}]}""", "/coverSeason/seed/0/coverCrop", "unknown-cover-crop")]
    [InlineData("""{"seed":[{"coverCrop":"oats","pack":{"value":0.5,"unit":"g"}}]}""", "/coverSeason/seed/0/pack", "pack-too-small")]
    [InlineData("""{"seed":[{"coverCrop":"oats"},{"coverCrop":"oats"}]}""", "/coverSeason/seed/1/coverCrop", "seed-listed-twice")]
    public async Task A_wish_that_cannot_be_read_is_refused_at_its_place(string coverSeason, string pointer, string code)
    {
        var reply = await service.PostAsync("/v1/cover-crops/season", Season(coverSeason));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal((pointer, code), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task A_gap_is_read_from_the_crops_and_a_bed_without_one_is_said()
    {
        var request = Season();
        foreach (var bed in request["beds"]!.AsArray())
        {
            bed!.AsObject().Remove("gap");
        }

        request["beds"]![0]!["crops"]!.AsArray().Add(JsonNode.Parse("""{"crop":"spinach","plantingDate":"2027-09-01"}"""));
        var reply = await service.PostAsync("/v1/cover-crops/season", request);

        var stand = Assert.Single(reply.Json["coverSeason"]!["stands"]!.AsArray())!;
        Assert.Equal(("A1", "2027-07-01", "2027-08-31"), ((string)stand["bed"]!, (string)stand["gap"]!["from"]!, (string)stand["gap"]!["to"]!));
        Assert.Contains("A2", (string)reply.Json["assumptions"]!.AsArray().Single(a => (string)a!["code"]! == "beds-without-gap")!["text"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_any_gap_there_is_no_season()
    {
        var request = Season();
        foreach (var bed in request["beds"]!.AsArray())
        {
            bed!.AsObject().Remove("gap");
        }

        var reply = await service.PostAsync("/v1/cover-crops/season", request);

        Assert.Equal(("/beds", "no-gaps"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task A_plan_holds_a_season_only_where_one_is_asked_for()
    {
        var plain = Requests.Plan(Requests.Bed("A1"));
        var asked = Requests.Plan(Requests.Bed("A1"));
        asked["options"]!["coverSeason"] = new JsonObject { ["mostSpecies"] = 1 };

        Assert.Null((await service.PostAsync("/v1/plans", plain)).Json["coverSeason"]);
        Assert.Single((await service.PostAsync("/v1/plans", asked)).Json["coverSeason"]!["seed"]!.AsArray());
        Assert.Contains("Cover crops for the season", (await service.PostAsync("/v1/plans", asked.ToJsonString(), accept: "text/markdown")).Text, StringComparison.Ordinal);
    }
}
