namespace SoilAdvisor.Api.Tests.Plans;

public sealed class PlanMediaTypeTests(Service service) : IClassFixture<Service>
{
    [Theory]
    [InlineData(null, "application/json")]
    [InlineData("*/*", "application/json")]
    [InlineData("application/json", "application/json")]
    [InlineData("text/html", "text/html")]
    [InlineData("text/markdown", "text/markdown")]
    [InlineData("text/csv", "text/csv")]
    [InlineData("text/*", "text/html")]
    [InlineData("text/html;q=0.4, text/markdown;q=0.8", "text/markdown")]
    [InlineData("application/json;q=0, */*", "text/html")]
    [InlineData("image/png, text/csv;q=0.1", "text/csv")]
    [InlineData("text/html;q=0.5, text/*;q=0.9", "text/markdown")]
    public async Task The_accept_header_chooses_the_media_type(string? accept, string mediaType)
    {
        var reply = await service.PostAsync("/v1/plans", Requests.Plan().ToJsonString(), accept: accept);

        Assert.Equal(HttpStatusCode.OK, reply.Status);
        Assert.Equal(mediaType, reply.MediaType);
        Assert.Contains("A1", reply.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("image/png")]
    [InlineData("text/html;q=0")]
    public async Task A_media_type_that_is_not_offered_is_not_replaced(string accept)
    {
        var reply = await service.PostAsync("/v1/plans", Requests.Plan().ToJsonString(), accept: accept);

        Assert.Equal(HttpStatusCode.NotAcceptable, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("Accept", "not-acceptable"), (fault.Pointer, fault.Code));
        Assert.Contains("text/markdown", fault.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text/html")]
    [InlineData("text/markdown")]
    public async Task What_was_left_out_is_said_on_paper_too(string accept)
    {
        var bad = Requests.Bed("B2");
        bad["soilTest"] = "South";
        var reply = await service.PostAsync("/v1/plans", Requests.Plan(Requests.Bed("A1"), bad).ToJsonString(), accept: accept);

        Assert.Contains("/beds/1/soilTest", reply.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_holds_no_script_and_loads_nothing()
    {
        var plan = Requests.Plan();
        plan["farm"] = "<script>alert(1)</script>";
        var reply = await service.PostAsync("/v1/plans", plan.ToJsonString(), accept: "text/html");

        Assert.DoesNotContain("<script", reply.Text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("src=\"http", reply.Text, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_refused_plan_is_a_problem_whatever_was_asked_for()
    {
        var reply = await service.PostAsync("/v1/plans", "{}", accept: "text/html");

        Assert.Equal(HttpStatusCode.UnprocessableEntity, reply.Status);
        Assert.Equal("application/problem+json", reply.MediaType);
    }
}
