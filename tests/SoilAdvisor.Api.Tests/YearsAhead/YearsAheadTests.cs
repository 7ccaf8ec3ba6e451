namespace SoilAdvisor.Api.Tests.YearsAhead;

public sealed class YearsAheadTests(Service service) : IClassFixture<Service>
{
    [Fact]
    public async Task The_years_that_were_asked_for_stand_beside_the_bed_with_their_band()
    {
        var bed = (await service.PostAsync("/v1/plans", Asked(3))).Json["beds"]![0]!;

        var years = bed["yearsAhead"]!["phosphorus"]!["years"]!.AsArray();
        Assert.Equal([0, 1, 2, 3], years.Select(y => (int)y!["year"]!));
        Assert.All(years, y => Assert.True((decimal)y!["low"]! <= (decimal)y["likely"]! && (decimal)y["likely"]! <= (decimal)y["high"]!));
        Assert.Equal("mg/kg", (string?)bed["yearsAhead"]!["phosphorus"]!["unit"]);
        Assert.Contains(bed["assumptions"]!.AsArray(), a => (string?)a!["code"] == "pounds-for-one-unit");
    }

    [Fact]
    public async Task Every_line_of_it_is_shown_when_the_working_is_asked_for_and_the_numbers_are_the_same()
    {
        var with = (await service.PostAsync("/v1/plans?working=true", Asked(2))).Json["beds"]![0]!;
        var without = (await service.PostAsync("/v1/plans", Asked(2))).Json["beds"]![0]!;

        Assert.Equal(without["yearsAhead"]!.ToJsonString(), with["yearsAhead"]!.ToJsonString());
        var formulas = with["working"]!.AsArray().Select(l => (string?)l!["formula"]).ToList();
        Assert.Superset(new HashSet<string?> { "phosphate-balance", "phosphorus-test-change", "projected-test", "projected-test-low-end", "projected-test-high-end", "potash-balance", "potassium-test-change" }, formulas.ToHashSet());
    }

    [Theory]
    [InlineData("0", "not-above-zero")]
    [InlineData("1", null)]
    [InlineData("20", null)]
    [InlineData("21", "impossible-value")]
    [InlineData("2.5", "not-whole")]
    public async Task One_to_twenty_whole_years_can_be_asked_for(string years, string? code)
    {
        var request = Requests.Plan();
        request["options"]!["years"] = JsonNode.Parse(years);

        var reply = await service.PostAsync("/v1/plans", request);

        Assert.Equal(code is null ? HttpStatusCode.OK : HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(code is null ? [] : [("/options/years", code)], (code is null ? reply.Refused : reply.Errors).Where(f => f.Pointer == "/options/years").Select(f => (f.Pointer, f.Code)));
    }

    [Theory]
    [InlineData("""{"material":"dairy-composted"}""", "/structure/rate", "structure-amount")]
    [InlineData("""{"material":"dairy-composted","rate":{"value":1,"unit":"ton/acre"},"depth":{"value":1,"unit":"in"}}""", "/structure/rate", "structure-amount")]
    [InlineData("""{"rate":{"value":1,"unit":"ton/acre"}}""", "/structure/material", "material-missing")]
    [InlineData("""{"material":"dairy-compostd","rate":{"value":1,"unit":"ton/acre"}}""", "/structure/material", "unknown-material")]
    [InlineData("""{"material":"dairy-composted","rate":{"value":1,"unit":"bucket"}}""", "/structure/rate/unit", "unknown-unit")]
    [InlineData("""{"material":"dairy-composted","rate":{"value":1,"unit":"ton/acre"}}""", "/structure", "structure-material-not-offered")]
    [InlineData("""{"material":"feather-meal","rate":{"value":1,"unit":"ton/acre"}}""", "/structure", "structure-not-compost")]
    public async Task A_dressing_that_cannot_be_spread_is_refused_at_its_place(string structure, string pointer, string code)
    {
        var bed = Requests.Bed("A1");
        bed["structure"] = JsonNode.Parse(structure);

        var reply = await service.PostAsync("/v1/plans", Requests.Plan(bed, Requests.Bed("B2")));

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Contains(reply.Refused, f => f.Pointer == "/beds/0" + pointer && f.Code == code);
    }

    [Fact]
    public async Task A_dressing_is_spread_and_says_what_it_costs_in_phosphorus()
    {
        var bed = Requests.Bed("A1");
        bed["structure"] = JsonNode.Parse("""{"material":"dairy-composted","rate":{"value":1,"unit":"ton/acre"}}""");
        var request = Requests.Plan(bed);
        request["materials"]!.AsArray().Add(JsonNode.Parse("""{"material":"dairy-composted"}"""));

        var answer = (await service.PostAsync("/v1/plans", request)).Json["beds"]![0]!;

        // 2000 lb with 0.5 % P2O5.
        Assert.Equal((10m, 10m), ((decimal)answer["structureDressing"]!["totalP2O5"]!["low"]!, (decimal)answer["structureDressing"]!["totalP2O5"]!["high"]!));
        Assert.Contains(answer["materials"]!.AsArray(), m => (string?)m!["purpose"] == "structure of the soil");
    }

    private static JsonObject Asked(int years)
    {
        var bed = Requests.Bed("A1");
        bed["crops"]![0]!["expectedYield"] = Requests.Quantity(5, "short-ton/acre");
        var request = Requests.Plan(bed);
        request["options"]!["years"] = years;
        return request;
    }
}
