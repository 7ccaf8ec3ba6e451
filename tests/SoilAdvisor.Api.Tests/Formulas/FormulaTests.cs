namespace SoilAdvisor.Api.Tests.Formulas;

public sealed class FormulaTests(Service service) : IClassFixture<Service>
{
    private const string Line = "/v1/formulas/cover-crop-plant-available-nitrogen";

    [Fact]
    public async Task A_formula_is_evaluated_with_its_line_of_working()
    {
        var reply = await service.PostAsync(Line, """{"inputs":{"n":3.5}}""");

        // PNW 636, highlights: 35 lb a ton at 3.5 % N.
        Assert.Equal(35m, (decimal)reply.Json["result"]!["value"]!);
        Assert.Equal("lb/ton dry matter", (string?)reply.Json["result"]!["unit"]);
        Assert.Equal(3.5m, (decimal)reply.Json["working"]![0]!["inputs"]![0]!["value"]!);
    }

    [Theory]
    [InlineData("""{}""", "/inputs", "inputs-missing")]
    [InlineData("""{"inputs":{}}""", "/inputs", "formula-inputs")]
    [InlineData("""{"inputs":{"n":3.5,"q":1}}""", "/inputs", "formula-inputs")]
    [InlineData("""{"inputs":{"n":7.1}}""", "/inputs", "formula-inputs")]
    [InlineData("""{"inputs":{"n":"3,5"}}""", "/inputs/n", "decimal-comma")]
    [InlineData("""{"inputs":{"n":"NaN"}}""", "/inputs/n", "not-a-number")]
    public async Task Inputs_that_do_not_fit_are_refused(string body, string pointer, string code)
    {
        var reply = await service.PostAsync(Line, body);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal((pointer, code), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Theory]
    [InlineData("1000000000000", HttpStatusCode.OK)]
    [InlineData("1000000000001", HttpStatusCode.UnprocessableEntity)]
    [InlineData("1e300", HttpStatusCode.UnprocessableEntity)]
    public async Task A_number_beyond_any_size_of_the_trade_is_refused(string harvest, HttpStatusCode status)
    {
        var reply = await service.PostAsync("/v1/formulas/crop-removal", $$$"""{"inputs":{"Y":{{{harvest}}},"c":3}}""");

        Assert.Equal(status, reply.Status);
        Assert.Equal(status == HttpStatusCode.OK ? [] : ["number-too-large"], reply.Errors.Select(e => e.Code));
    }

    [Fact]
    public async Task An_input_that_is_null_is_not_zero()
    {
        var reply = await service.PostAsync(Line, """{"inputs":{"n":null}}""");

        Assert.Equal(HttpStatusCode.BadRequest, reply.Status);
        Assert.Equal(("/inputs/n", "wrong-kind"), (reply.Errors.Single().Pointer, reply.Errors.Single().Code));
    }

    [Fact]
    public async Task An_unknown_formula_is_answered_with_the_nearest()
    {
        var reply = await service.PostAsync("/v1/formulas/cover-crop-plant-available-nitrogn", """{"inputs":{}}""");

        Assert.Equal(HttpStatusCode.NotFound, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal("unknown-formula", fault.Code);
        Assert.Contains("cover-crop-plant-available-nitrogen", fault.Suggestion, StringComparison.Ordinal);
    }
}
