namespace SoilAdvisor.Api.Tests;

/// <summary>Requests that the service answers in full; each test spoils one thing. All data are invented.</summary>
internal static class Requests
{
    public const string Phosphorus = """{"analyte":"P","value":14,"unit":"mg/kg","extractant":"mehlich-3","detection":"icp"}""";

    public static JsonNode SoilTest(params string[] readings) => JsonNode.Parse($$"""
        {"id":"North","sampled":"2026-10-20","texture":"loam","readings":[{{string.Join(',', readings.Length > 0 ? readings : [Phosphorus])}}]}
        """)!;

    public static JsonNode FullSoilTest() => SoilTest(
        Phosphorus,
        """{"analyte":"pH","value":5.7,"method":"water-1:1"}""",
        """{"analyte":"bufferPh","value":6.2,"method":"mehlich"}""",
        """{"analyte":"K","value":192,"unit":"mg/kg","extractant":"mehlich-3"}""",
        """{"analyte":"Mg","value":84,"unit":"mg/kg","extractant":"mehlich-3"}""",
        """{"analyte":"B","value":0.2,"comparator":"<","unit":"mg/kg","extractant":"mehlich-3"}""");

    public static JsonObject Ratings(params string[] readings) => new() { ["guide"] = "delaware-vegetables", ["soilTest"] = SoilTest(readings) };

    public static JsonObject Lime() => new() { ["soilTest"] = FullSoilTest(), ["crop"] = "broccoli", ["area"] = Quantity(250, "sq ft") };

    public static JsonObject CoverCrops() => JsonNode.Parse("""
        {"window":{"from":"2027-07-05","to":"2027-08-25"},"aims":["weeds"],"frost":{"lastSpring":"2027-05-10","firstFall":"2027-10-05"}}
        """)!.AsObject();

    public static JsonObject Nitrogen() => JsonNode.Parse("""
        {"coverCrop":"hairy-vetch","dryMatter":{"value":4000,"unit":"lb/acre"},"nitrogenPercent":3.5}
        """)!.AsObject();

    public static JsonObject Check()
    {
        var check = new JsonObject { ["date"] = "2026-11-24", ["soilTest"] = FullSoilTest(), ["bed"] = Bed("A1") };
        check["bed"]!["applied"] = JsonNode.Parse("""[{"material":"dairy-fresh","amount":{"value":250,"unit":"lb"},"date":"2027-03-01","incorporated":"2027-03-01"}]""");
        return check;
    }

    public static JsonObject Plan(params JsonNode[] beds) => new()
    {
        ["farm"] = "Invented garden",
        ["region"] = "US-DE",
        ["guide"] = "delaware-vegetables",
        ["soilTests"] = new JsonArray(FullSoilTest()),
        ["beds"] = new JsonArray(beds.Length > 0 ? beds : [Bed("A1")]),
        ["materials"] = JsonNode.Parse("""
            [{"material":"feather-meal","price":{"value":48,"currency":"USD","per":{"value":50,"unit":"lb"}}},
             {"material":"bone-meal-steamed","price":{"value":45,"currency":"USD","per":{"value":50,"unit":"lb"}},"onHand":{"value":5,"unit":"lb"}},
             {"material":"calcitic-lime","price":{"value":7.5,"currency":"USD","per":{"value":40,"unit":"lb"}}}]
            """),
        ["options"] = new JsonObject { ["date"] = "2026-11-24" },
    };

    public static JsonNode Bed(string id) => JsonNode.Parse($$$"""
        {"id":"{{{id}}}","length":{"value":100,"unit":"ft"},"width":{"value":30,"unit":"in"},"spread":"bed-top","soilTest":"North",
         "crops":[{"crop":"broccoli","plantingDate":"2027-04-12","firstHarvest":"2027-06-12","harvestEnd":"2027-06-30"}],
         "gap":{"from":"2027-07-05","to":"2027-08-25"}}
        """)!;

    public static JsonObject Quantity(decimal value, string unit) => new() { ["value"] = value, ["unit"] = unit };
}
