namespace SoilAdvisor.Api.Tests.Plans;

public sealed class PlanTests(Service service) : IClassFixture<Service>
{
    private static readonly string[] Weights = ["lb", "kg"];

    [Fact]
    public async Task A_bed_gets_a_rate_for_each_material_on_the_ground_that_is_spread()
    {
        var reply = await service.PostAsync("/v1/plans", Requests.Plan());

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var bed = reply.Json["beds"]![0]!;
        Assert.Equal(250m, (decimal)bed["area"]!["value"]!);
        var materials = bed["materials"]!.AsArray();
        Assert.NotEmpty(materials);
        Assert.All(materials, m =>
        {
            // lb/acre on 250 sq ft of an acre of 43,560 sq ft.
            var perBed = (double)m!["rate"]!["perAcre"]!["value"]! * 250 / 43560;
            Assert.Equal(perBed, (double)m["perBed"]!["value"]!, 1e-4 * perBed);
            Assert.Equal("bed-top", (string?)m["rate"]!["areaBasis"]);
        });
        Assert.False((bool)reply.Json["totals"]!["partial"]!);
    }

    [Fact]
    public async Task Metric_and_customary_units_weigh_the_same()
    {
        var customary = await service.PostAsync("/v1/plans", Requests.Plan());
        var metric = await service.PostAsync("/v1/plans?units=metric", Requests.Plan());

        var pairs = customary.Json["beds"]![0]!["materials"]!.AsArray().Zip(metric.Json["beds"]![0]!["materials"]!.AsArray()).ToList();
        Assert.NotEmpty(pairs);
        Assert.All(pairs, p =>
        {
            Assert.Equal(Weights, new[] { (string)p.First!["perBed"]!["unit"]!, (string)p.Second!["perBed"]!["unit"]! });
            var kilograms = (double)p.First!["perBed"]!["value"]! * 0.45359237;
            Assert.Equal(kilograms, (double)p.Second!["perBed"]!["value"]!, 1e-4 * kilograms);
        });
    }

    public static TheoryData<string, string, string, string, string> BadBeds => new()
    {
        { """{"id":""}""", "/id", "id-missing", "id is missing", "name of your own" },
        { """{"length":null}""", "/area", "bed-area-missing", "The bed has no area", "length and width" },
        { """{"length":{"value":0,"unit":"ft"}}""", "/length/value", "not-above-zero", "must be above 0", "above 0" },
        { """{"length":{"value":-100,"unit":"ft"}}""", "/length/value", "not-above-zero", "The length is -100", "above 0" },
        { """{"length":{"value":"10,5","unit":"ft"}}""", "/length/value", "decimal-comma", "\"10,5\"", "decimal point" },
        { """{"length":{"value":100}}""", "/length/unit", "unit-missing", "unit of the length is missing", "unit beside the value" },
        { """{"length":{"value":100,"unit":"feet"}}""", "/length/unit", "unknown-unit", "\"feet\"", "ft" },
        { """{"spread":"bed-and-path"}""", "/area", "center-spacing-missing", "distance between bed centres", "centerSpacing" },
        { """{"spread":"everywhere"}""", "/spread", "unknown-spread", "\"everywhere\"", "bed-top" },
        { """{"site":"roof"}""", "/site", "unknown-site", "\"roof\"", "high-tunnel" },
        { """{"soilTest":null}""", "/soilTest", "soil-test-missing", "names no soil test", "id of one" },
        { """{"soilTest":"Nort"}""", "/soilTest", "unknown-soil-test", "\"Nort\"", "Did you mean North?" },
        { """{"crops":[]}""", "/crops", "crop-missing", "no crops", "at least one crop" },
        { """{"crops":[{"crop":"brocoli"}]}""", "/crops/0/crop", "unknown-crop", "\"brocoli\"", "broccoli" },
        { """{"crops":[{"crop":"broccoli","plantingDate":"4/12/2027"}]}""", "/crops/0/plantingDate", "date-form", "\"4/12/2027\"", "2026-03-31" },
        { """{"crops":[{"crop":"broccoli","plantingDate":"2027-04-12","firstHarvest":"2027-04-11"}]}""", "/crops/0/firstHarvest", "date-order", "before the planting date", "Correct one" },
        { """{"crops":[{"crop":"broccoli","placement":"shelf"}]}""", "/crops/0/placement", "unknown-placement", "\"shelf\"", "no-contact" },
        { """{"applied":[{"material":"chicken"}]}""", "/applied/0/amount", "amount-missing", "amount that was spread is missing", "mass on the whole bed" },
        { """{"previous":[{}]}""", "/previous/0/crop", "stand-missing", "a crop, a cover crop or a mixture", "crop, coverCrop or mixture" },
        { """{"previous":[{"coverCrop":"hairy-vech"}]}""", "/previous/0/coverCrop", "unknown-cover-crop", "\"hairy-vech\"", "hairy-vetch" },
        { """{"gap":{"from":"2027-08-01","to":"2027-07-31"}}""", "/gap/to", "date-order", "before it begins", "Correct one" },
        { """{"gap":{"from":"2027-08-01","to":"2029-08-02"}}""", "/gap/to", "gap-too-long", "longer than two years", "between two crops" },
        { """{"waterWithinFeet":-1}""", "/waterWithinFeet", "negative-value", "cannot be below 0", "sign" },
    };

    [Theory, MemberData(nameof(BadBeds))]
    public async Task A_faulty_bed_is_refused_with_its_fault_and_the_others_are_planned(string changes, string pointer, string code, string message, string suggestion)
    {
        var bad = Requests.Bed("B2");
        foreach (var (member, value) in JsonNode.Parse(changes)!.AsObject())
        {
            bad[member] = value?.DeepClone();
        }

        var reply = await service.PostAsync("/v1/plans", Requests.Plan(Requests.Bed("A1"), bad));

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal("planned", (string?)reply.Json["beds"]![0]!["state"]);
        Assert.Equal("refused", (string?)reply.Json["beds"]![1]!["state"]);
        Assert.True((bool)reply.Json["totals"]!["partial"]!);
        var fault = Assert.Single(reply.Refused, f => f.Code == code);
        Assert.Equal("/beds/1" + pointer, fault.Pointer);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Contains(suggestion, fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_bed_that_stands_twice_is_planned_once()
    {
        var reply = await service.PostAsync("/v1/plans", Requests.Plan(Requests.Bed("A1"), Requests.Bed("A1")));

        Assert.Equal(["planned", "refused"], reply.Json["beds"]!.AsArray().Select(b => (string)b!["state"]!));
        var fault = Assert.Single(reply.Refused, f => f.Pointer.StartsWith("/beds", StringComparison.Ordinal));
        Assert.Equal(("/beds/1/id", "duplicate-bed"), (fault.Pointer, fault.Code));
        Assert.Contains("A1", fault.Message, StringComparison.Ordinal);
    }

    public static TheoryData<string, string, string, string> BadMaterials => new()
    {
        { """{"price":{"value":1,"currency":"USD","per":{"value":1,"unit":"lb"}}}""", "/material", "material-missing", "material is missing" },
        { """{"material":"feather-mea"}""", "/material", "unknown-material", "\"feather-mea\"" },
        { """{"material":"blood-meal","price":{"value":-1,"currency":"USD","per":{"value":1,"unit":"lb"}}}""", "/price/value", "negative-value", "The price is -1" },
        { """{"material":"blood-meal","price":{"value":1,"currency":"dollars","per":{"value":1,"unit":"lb"}}}""", "/price/currency", "currency", "\"dollars\"" },
        { """{"material":"blood-meal","price":{"value":1,"currency":"USD"}}""", "/price/per", "price-without-amount", "for how much" },
        { """{"material":"blood-meal","onHand":{"value":1,"unit":"bag"}}""", "/onHand/unit", "unknown-unit", "\"bag\"" },
        { """{"material":"blood-meal","analysis":{"n":101}}""", "/analysis/n", "impossible-value", "more than 100 %" },
        { """{"material":"blood-meal","analysis":{"p2o5":"1,5"}}""", "/analysis/p2o5", "decimal-comma", "Phosphate (P2O5) is \"1,5\"" },
        { """{"material":"blood-meal","analysis":{"k2o":-1}}""", "/analysis/k2o", "negative-value", "Potash (K2O) is -1" },
        { """{"material":"blood-meal","origin":"neighbour"}""", "/origin", "unknown-origin", "\"neighbour\"" },
        { """{"material":"blood-meal","most":{"value":0,"unit":"lb/acre"}}""", "/most/value", "not-above-zero", "must be above 0" },
        { """{"material":"blood-meal","most":{"value":4,"unit":"tons"}}""", "/most/unit", "unknown-unit", "\"tons\"" },
        { """{"material":"feather-meal"}""", "/material", "material-listed-twice", "stands twice" },
    };

    [Theory, MemberData(nameof(BadMaterials))]
    public async Task A_faulty_material_is_left_out_and_said(string material, string pointer, string code, string message)
    {
        var plan = Requests.Plan();
        plan["materials"]!.AsArray().Add(JsonNode.Parse(material));
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var fault = Assert.Single(reply.Refused, f => f.Pointer.StartsWith("/materials", StringComparison.Ordinal));
        Assert.Equal(("/materials/3" + pointer, code), (fault.Pointer, fault.Code));
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Prices_in_two_currencies_are_not_added()
    {
        var plan = Requests.Plan();
        plan["materials"]![0]!["price"]!["currency"] = "EUR";
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal("two-currencies", Assert.Single(reply.Errors).Code);
    }

    [Fact]
    public async Task A_need_that_the_materials_cannot_meet_says_by_how_much_and_what_would()
    {
        var plan = Requests.Plan();
        plan["materials"] = JsonNode.Parse("""[{"material":"calcitic-lime"}]""");
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        var shortfalls = reply.Json["beds"]![0]!["shortfalls"]!.AsArray();
        Assert.Contains(shortfalls, s => (string?)s!["nutrient"] == "N" && (decimal)s["amount"]!["value"]! > 0);
        Assert.All(shortfalls, s => Assert.False(string.IsNullOrWhiteSpace((string?)s!["whatWouldMeetIt"])));
    }

    [Fact]
    public async Task A_soil_test_older_than_three_years_is_warned_about()
    {
        var plan = Requests.Plan();
        plan["soilTests"]![0]!["sampled"] = "2023-10-20";
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Contains(reply.Json["beds"]![0]!["warnings"]!.AsArray(), w => ((string)w!).Contains("three years", StringComparison.OrdinalIgnoreCase) || ((string)w!).Contains("3 years", StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task A_faulty_soil_test_refuses_its_beds_and_says_why()
    {
        var plan = Requests.Plan();
        plan["soilTests"]![0]!["sampled"] = "yesterday";
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(["date-form", "soil-test-refused"], reply.Errors.Select(e => e.Code).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task A_soil_test_that_stands_twice_is_said()
    {
        var plan = Requests.Plan();
        plan["soilTests"]!.AsArray().Add(Requests.SoilTest());
        var reply = await service.PostAsync("/v1/plans", plan);

        var fault = Assert.Single(reply.Refused, f => f.Code == "duplicate-soil-test");
        Assert.Equal("/soilTests/1/id", fault.Pointer);
        Assert.Equal("planned", (string?)reply.Json["beds"]![0]!["state"]);
    }

    [Fact]
    public async Task Nothing_to_plan_is_a_fault()
    {
        var reply = await service.PostAsync("/v1/plans", "{}");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal([("/beds", "no-beds"), ("/soilTests", "soil-test-missing")], reply.Errors.Select(e => (e.Pointer, e.Code)).Order());
    }

    [Theory]
    [InlineData("2026-02-30")]
    [InlineData("tomorrow")]
    [InlineData("1899-12-31")]
    [InlineData("2200-01-01")]
    public async Task A_date_that_is_none_refuses_the_plan(string date)
    {
        var plan = Requests.Plan();
        plan["options"]!["date"] = date;
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal(("/options/date", "date-form"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Theory]
    [InlineData("1900-01-01")]
    [InlineData("2199-12-31")]
    public async Task The_first_and_the_last_day_of_the_calendar_can_be_counted_from(string date)
    {
        var bed = Requests.Bed("A1");
        bed["crops"]![0]!["plantingDate"] = date;
        bed["crops"]![0]!["firstHarvest"] = date;
        bed["crops"]![0]!["harvestEnd"] = date;
        bed["gap"] = JsonNode.Parse($$"""{"from":"{{date}}","to":"{{date}}"}""");
        bed["applied"] = JsonNode.Parse($$"""[{"material":"dairy-fresh","amount":{"value":250,"unit":"lb"},"date":"{{date}}","incorporated":"{{date}}"}]""");
        var reply = await service.PostAsync("/v1/plans", Requests.Plan(bed));

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.DoesNotContain(reply.Refused, f => f.Pointer.StartsWith("/beds", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_a_date_the_day_of_the_request_is_taken_and_said()
    {
        var plan = Requests.Plan();
        plan["options"]!.AsObject().Remove("date");
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Contains(reply.Json["assumptions"]!.AsArray(), a => (string?)a!["code"] == "date-of-request" && ((string)a["text"]!).Contains((string)reply.Json["date"]!, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_same_request_gives_the_same_bytes()
    {
        var first = await service.PostAsync("/v1/plans?working=true", Requests.Plan());
        var second = await service.PostAsync("/v1/plans?working=true", Requests.Plan());

        Assert.Equal(first.Text, second.Text);
    }
}
