namespace SoilAdvisor.Api.Tests.CoverCrops;

public sealed class SeedTests(Service service) : IClassFixture<Service>
{
    // By hand: 90 lb/acre × 60 % = 54; tag 98 × 90 % = 88.2 %; 54 / 0.882 = 61.2245 lb/acre; on 250 sq ft 0.351380 lb = 5.62208 oz = 159.383 g.
    [Fact]
    public async Task A_share_of_a_given_rate_becomes_ounces_and_grams_for_the_bed()
    {
        var reply = await service.PostAsync("/v1/cover-crops/seed", """
            {"sowing":"drilled","area":{"value":250,"unit":"sq ft"},"species":[{"coverCrop":"oats","sharePercent":60,"fullRate":{"value":90,"unit":"lb/acre"},"purity":98,"germination":90,"price":{"value":1,"currency":"USD","per":{"value":1,"unit":"lb"}}}]}
            """);

        var oats = reply.Json["species"]![0]!;
        Assert.Equal(54m, (decimal)oats["pureLiveRate"]!["value"]!);
        Assert.Equal(88.2m, (decimal)oats["pureLivePercent"]!);
        Assert.Equal(61.2245m, (decimal)oats["seedRate"]!["value"]!, 4);
        Assert.Equal(5.62208m, (decimal)oats["perBedOunces"]!["value"]!, 4);
        Assert.Equal(159.383m, (decimal)oats["perBedGrams"]!["value"]!, 3);
        Assert.Equal(0.35m, (decimal)oats["cost"]!["value"]!);
    }

    [Fact]
    public async Task A_mixture_says_its_inoculant_its_fit_and_its_sources()
    {
        var reply = await service.PostAsync("/v1/cover-crops/seed", """{"species":[{"coverCrop":"oats"},{"coverCrop":"field-pea"}]}""");

        Assert.Equal(120m, (decimal)reply.Json["totalSharePercent"]!);
        Assert.Equal("field-pea", (string)Assert.Single(reply.Json["inoculants"]!.AsArray())!["coverCrops"]![0]!);
        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string)a!["code"]! == "sown-broadcast");
        Assert.All(reply.Json["warnings"]!.AsArray(), w => Assert.Contains((string)w!["source"]!, reply.Json["sources"]!.AsArray().Select(s => (string)s!["id"]!)));
    }

    [Theory]
    [InlineData("""{"species":[]}""", "/species", "no-species")]
    [InlineData("""{"species":[{"coverCrop":"oats"},{"coverCrop":"oats"}]}""", "/species", "species-twice")]
    [InlineData("""{"sowing":"flown","species":[{"coverCrop":"oats"}]}""", "/sowing", "unknown-sowing")]
    [InlineData("""{"species":[{"coverCrop":"oats","sharePercent":50,"seedsPerSquareFoot":9}]}""", "/species/0/sharePercent", "share-and-seeds")]
    [InlineData("""{"species":[{"coverCrop":"oats","purity":98}]}""", "/species/0/germination", "seed-tag-incomplete")]
    [InlineData("""{"species":[{"coverCrop":"oats","purity":98,"germination":95,"hardSeed":6}]}""", "/species/0/germination", "seed-tag-over-100")]
    [InlineData("""{"species":[{"coverCrop":"oats","purity":101,"germination":95}]}""", "/species/0/germination", "seed-tag-percent")]
    public async Task Seed_that_cannot_be_reckoned_is_refused_at_its_place(string json, string pointer, string code)
    {
        var reply = await service.PostAsync("/v1/cover-crops/seed", json);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal((pointer, code), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }
}
