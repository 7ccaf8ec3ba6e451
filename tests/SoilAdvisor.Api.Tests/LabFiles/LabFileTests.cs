namespace SoilAdvisor.Api.Tests.LabFiles;

public sealed class LabFileTests(Service service) : IClassFixture<Service>
{
    private const string Header = "id,\"P (mg/kg, Mehlich-3 ICP)\",pH (1:1 water)";

    public static TheoryData<string, string, string, string, string> Bad => new()
    {
        { "\n\n", "line 1", "empty-file", "holds nothing", "header line" },
        { Header + "\n", "line 1, column 1", "no-samples", "no samples", "one line for each sample" },
        { "name,pH (1:1 water)\nA,6\n", "line 1, column 1", "id-missing", "no column id", "Add a column id" },
        { "id;pH\nA;6\n", "line 1", "column-separator", "semicolons", "comma-separated" },
        { "id\tpH\nA\t6\n", "line 1", "column-separator", "tabs", "comma-separated" },
        { Header + "\nA,14\n", "line 2, column 1", "row-length", "has 2 cells; the header has 3", "decimal comma" },
        { Header + "\nA,\"14,6.2\n", "line 2, column 1", "malformed-csv", "cannot be split", "quotation mark" },
        { Header + "\n,14,6.2\n", "line 2, column 1", "id-missing", "id is missing", "name of your own" },
        { Header + "\nA,\"1,4\",6.2\n", "line 2, column 2", "decimal-comma", "\"1,4\"", "decimal point" },
        { Header + "\nA,NaN,6.2\n", "line 2, column 2", "not-a-number", "\"NaN\"", "plain digits" },
        { Header + "\nA,-14,6.2\n", "line 2, column 2", "negative-value", "P is -14 mg/kg", "sign" },
        { Header + "\nA,14,15\n", "line 2, column 3", "ph-range", "pH is 15", "swapped column" },
        { Header + "\nA,10001,6.2\n", "line 2, column 2", "impossible-value", "10001 mg/kg", "column" },
        { "id,sampled,pH\nA,3/1/2026,6\n", "line 2, column 2", "date-form", "\"3/1/2026\"", "2026-03-31" },
        { "id,texture,pH\nA,lome,6\n", "line 2, column 2", "unknown-texture", "\"lome\"", "Did you mean loam" },
        { "id,timing,pH\nA,sometime,6\n", "line 2, column 2", "unknown-timing", "\"sometime\"", "before-sidedressing" },
        { "id,depth,pH\nA,0-6,6\n", "line 1, column 2", "unit-missing", "depth has no unit", "depth (in)" },
        { "id,depth (in),pH\nA,6-0,6\n", "line 2, column 2", "not-above-zero", "must be above 0", "above 0" },
        { "id,free lime,pH\nA,maybe,6\n", "line 2, column 2", "yes-or-no", "\"maybe\"", "yes or no" },
        { "id,pH,Potasium\nA,6,7\n", "line 1, column 3", "unknown-column", "\"Potasium\"", "Known:" },
        { "id,pH,\n\"A\",6,7\n", "line 1, column 3", "header-empty", "no name", "delete the column" },
        { "id,pH,\"Ca (mg/kg, Melich)\"\nA,6,7\n", "line 1, column 3", "unknown-extractant", "\"Melich\"", "Did you mean mehlich" },
        { "id,pH,\"Ca (mg/kgg, Mehlich-3)\"\nA,6,7\n", "line 1, column 3", "unknown-unit", "\"mg/kgg\"", "Did you mean mg/kg" },
        { "id,pH,Ca (mg/kg)\nA,6,7\n", "line 1, column 3", "extractant-missing", "Ca has no extractant", "ask the laboratory" },
        { "id,pH,\"P2O5 (mg/kg, Mehlich-3)\"\nA,6,7\n", "line 1, column 3", "oxide-analyte", "P2O5 is an oxide", "basis oxide" },
        { "id,pH,lime\nA,6,1\n", "line 1, column 3", "unit-missing", "has no unit", "lime (ton/acre)" },
        { "id,pH,pH (1:1 water)\nA,6,6\n", "line 1, column 3", "duplicate-column", "pH stands in two columns", "Keep the column" },
        { Header + "\nA,14,6.2\nA,15,6.2\n", "line 3, column 1", "duplicate-soil-test", "A stands twice", "its own id" },
    };

    [Theory, MemberData(nameof(Bad))]
    public async Task A_fault_names_line_and_column_and_what_to_do(string csv, string pointer, string code, string message, string suggestion)
    {
        var reply = await service.PostAsync("/v1/lab-files", csv, "text/csv");

        var fault = Assert.Single(reply.Errors, e => e.Code == code);
        Assert.Equal(pointer, fault.Pointer);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Contains(suggestion, fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Byte_order_mark_windows_line_ends_and_blank_lines_change_nothing()
    {
        var plain = await service.PostAsync("/v1/lab-files", Header + "\nA,14,6.2\nB,< 5,7\n", "text/csv");
        var windows = await service.PostAsync("/v1/lab-files", "\uFEFF" + Header + "\r\nA,14,6.2\r\n\r\nB,< 5,7\r\n", "text/csv; charset=utf-8");

        Assert.Equal(HttpStatusCode.OK, plain.Status);
        Assert.Empty(plain.Errors);
        Assert.Equal(plain.Text, windows.Text);
    }

    [Fact]
    public async Task A_blank_cell_was_not_reported_and_is_no_reading()
    {
        var reply = await service.PostAsync("/v1/lab-files", Header + "\nA,,6.2\n", "text/csv");

        Assert.Empty(reply.Errors);
        Assert.Equal("pH", (string?)Assert.Single(reply.Json["soilTests"]![0]!["readings"]!.AsArray())!["analyte"]);
    }

    [Fact]
    public async Task A_column_of_phosphate_keeps_its_basis()
    {
        var reply = await service.PostAsync("/v1/lab-files", "id,\"P as P2O5 (mg/kg, Mehlich-3 ICP)\"\nA,14\n", "text/csv");

        Assert.Empty(reply.Errors);
        Assert.Contains("\"basis\":\"oxide\"", reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faults_of_several_lines_come_at_once_and_the_good_lines_are_read()
    {
        var reply = await service.PostAsync("/v1/lab-files", Header + "\nA,14,6.2\nB,abc,15\nC,\"2,5\",6.5\n", "text/csv");

        Assert.Equal(["line 3, column 2", "line 3, column 3", "line 4, column 2"], reply.Errors.Select(e => e.Pointer).Order(StringComparer.Ordinal));
        Assert.Equal(["A", "B", "C"], reply.Json["soilTests"]!.AsArray().Select(t => (string)t!["id"]!));
    }

    [Fact]
    public async Task Text_that_is_not_utf_8_is_refused()
    {
        using var content = new ByteArrayContent([0x69, 0x64, 0xFF, 0xFE]);
        content.Headers.ContentType = new("text/csv");
        var reply = await Reply.OfAsync(await service.Client.PostAsync("/v1/lab-files", content));

        Assert.Equal(HttpStatusCode.BadRequest, reply.Status);
        Assert.Equal("not-utf-8", Assert.Single(reply.Errors).Code);
    }

    [Theory]
    [InlineData(200, HttpStatusCode.OK)]
    [InlineData(201, HttpStatusCode.UnprocessableEntity)]
    public async Task A_file_holds_at_most_200_samples(int samples, HttpStatusCode status)
    {
        var rows = string.Concat(Enumerable.Range(1, samples).Select(i => string.Create(CultureInfo.InvariantCulture, $"S{i},14,6.2\n")));
        var reply = await service.PostAsync("/v1/lab-files", Header + "\n" + rows, "text/csv");

        Assert.Equal(status, reply.Status);
        Assert.Equal(samples > 200 ? ["too-many"] : [], reply.Errors.Select(e => e.Code));
    }

    [Fact]
    public async Task What_a_lab_file_gives_is_taken_by_the_plan()
    {
        var read = await service.PostAsync("/v1/lab-files", "id,\"P (mg/kg, Mehlich-3 ICP)\",pH (1:1 water),buffer pH (Mehlich)\nNorth,14,5.7,6.2\n", "text/csv");
        var plan = Requests.Plan();
        plan["soilTests"] = read.Json["soilTests"]!.DeepClone();
        var reply = await service.PostAsync("/v1/plans", plan);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal("Low", (string?)reply.Json["beds"]![0]!["ratings"]![0]!["class"]);
    }

    [Fact]
    public async Task Everything_that_describes_a_sample_is_kept()
    {
        var reply = await service.PostAsync(
            "/v1/lab-files",
            "id,lab,depth (cm),soil class,free lime,cores,bulk density,lb/acre factor,pH,\"lime (ton/acre, calcium carbonate equivalent)\",recommended K2O (lb/acre)\nA,Invented,15,III,yes,12,1.3,1.8,6.2,1.5,100\n",
            "text/csv");

        Assert.Empty(reply.Errors);
        var test = reply.Json["soilTests"]![0]!;
        Assert.Equal(("Invented", "III", true), ((string?)test["lab"], (string?)test["soilClass"], (bool)test["freeLime"]!));
        Assert.Equal((12m, 1.3m, 1.8m), ((decimal)test["cores"]!, (decimal)test["bulkDensity"]!, (decimal)test["poundsPerAcreFactor"]!));
        Assert.Equal((0m, 15m, "cm"), ((decimal)test["depth"]!["from"]!, (decimal)test["depth"]!["to"]!, (string?)test["depth"]!["unit"]));
        Assert.Equal(["lime", "K2O"], test["labRecommendations"]!.AsArray().Select(r => (string)r!["what"]!));
        Assert.Equal("calcium carbonate equivalent", (string?)test["labRecommendations"]![0]!["basis"]);
    }

    [Theory]
    [InlineData("cores", "0", "not-above-zero")]
    [InlineData("cores", "1", null)]
    [InlineData("bulk density", "2.65", null)]
    [InlineData("bulk density", "2.66", "impossible-value")]
    [InlineData("lb/acre factor", "10", null)]
    [InlineData("lb/acre factor", "11", "impossible-value")]
    [InlineData("lime (ton/acre)", "-1", "negative-value")]
    [InlineData("lime (ton/acre)", "0", null)]
    public async Task What_describes_a_sample_is_judged_in_its_own_column(string column, string cell, string? code)
    {
        var reply = await service.PostAsync("/v1/lab-files", $"id,pH,{column}\nA,6.2,{cell}\nB,6.2,\n", "text/csv");

        Assert.Equal(code is null ? [] : [("line 2, column 3", code)], reply.Errors.Select(e => (e.Pointer, e.Code)));
    }

    [Fact]
    public async Task A_sample_that_stands_twice_in_json_is_read_once()
    {
        var reply = await service.PostAsync("/v1/lab-files", new JsonObject { ["soilTests"] = new JsonArray(Requests.SoilTest(), Requests.SoilTest()) });

        Assert.Single(reply.Json["soilTests"]!.AsArray());
        Assert.Equal(("/soilTests/1/id", "duplicate-soil-test"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task Another_content_type_is_told_both_that_are_taken()
    {
        var reply = await service.PostAsync("/v1/lab-files", Header + "\n", "application/pdf");

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal("content-type", fault.Code);
        Assert.Contains("text/csv or application/json", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Strictly_asked_a_fault_refuses_the_whole_file()
    {
        var reply = await service.PostAsync("/v1/lab-files?strict=true", Header + "\nA,14,15\n", "text/csv");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal("ph-range", Assert.Single(reply.Errors).Code);
    }
}
