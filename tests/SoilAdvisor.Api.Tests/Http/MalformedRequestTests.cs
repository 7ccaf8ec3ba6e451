namespace SoilAdvisor.Api.Tests.Http;

public sealed class MalformedRequestTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string, string, string, string, string> Bodies => new()
    {
        { "", "", "empty-body", "empty", "JSON" },
        { "{\"soilTest\":", "line 1, byte 13", "malformed-json", "not JSON", "Correct it there" },
        { "{\"soilTest\":NaN}", "line 1, byte 13", "malformed-json", "not JSON", "NaN is not a number" },
        { "{\"soilTest\":{\"id\":\"a\",\"readings\":[{\"value\":1,5}]}}", "line 1, byte 46", "malformed-json", "not JSON", "decimal point" },
        { "null", "", "wrong-kind", "null", "Write an object" },
        { "[]", "", "wrong-kind", "A list stands where an object belongs", "Write an object" },
        { "{\"soilTest\":{\"id\":7}}", "/soilTest/id", "wrong-kind", "A number stands where text in quotes belongs", "Write text in quotes" },
        { "{\"soilTest\":{\"freeLime\":\"yes\"}}", "/soilTest/freeLime", "wrong-kind", "Text stands where true or false belongs", "Write true or false" },
        { "{\"soilTest\":{\"readings\":[null]}}", "/soilTest/readings/0", "wrong-kind", "null stands where an entry belongs", "leave it out" },
        { "{\"soilTst\":{}}", "/soilTst", "unknown-member", "\"soilTst\" is not a member here", "Did you mean soilTest?" },
        { "{\"soilTest\":{\"readings\":[{\"analyt\":\"P\"}]}}", "/soilTest/readings/0/analyt", "unknown-member", "\"analyt\"", "Did you mean analyte?" },
        { "{\"guide\":\"a\",\"guide\":\"b\"}", "", "duplicate-member", "twice", "Keep one" },
    };

    [Theory, MemberData(nameof(Bodies))]
    public async Task A_body_that_is_not_the_agreed_form_is_refused_with_its_place(string body, string pointer, string code, string message, string suggestion)
    {
        var reply = await service.PostAsync("/v1/ratings", body);

        Assert.Equal(HttpStatusCode.BadRequest, reply.Status);
        Assert.Equal("application/problem+json", reply.MediaType);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal((pointer, code), (fault.Pointer, fault.Code));
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
        Assert.Contains(suggestion, fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_unknown_member_is_named_at_once()
    {
        var reply = await service.PostAsync("/v1/plans", """{"fram":"x","beds":[{"idd":"a"},{"lenght":{}}]}""");

        Assert.Equal(["/fram", "/beds/0/idd", "/beds/1/lenght"], reply.Errors.Select(e => e.Pointer));
    }

    [Fact]
    public async Task Nesting_beyond_the_limit_is_refused()
    {
        var reply = await service.PostAsync("/v1/ratings", new string('[', 17) + new string(']', 17));

        Assert.Equal(HttpStatusCode.BadRequest, reply.Status);
        Assert.Equal("malformed-json", Assert.Single(reply.Errors).Code);
    }

    [Theory]
    [InlineData("text/plain")]
    [InlineData("application/json; charset=utf-16")]
    [InlineData("application/xml")]
    public async Task Another_content_type_is_refused(string contentType)
    {
        var reply = await service.PostAsync("/v1/ratings", Requests.Ratings().ToJsonString(), contentType);

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal("content-type", fault.Code);
        Assert.Contains(contentType, fault.Message, StringComparison.Ordinal);
        Assert.Contains("application/json", fault.Suggestion, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("?workin=true", "workin", "unknown-option", "working, strict, units")]
    [InlineData("?working=yes", "working", "option-value", "working=true")]
    [InlineData("?units=imperial", "units", "option-value", "units=metric")]
    public async Task An_option_that_nobody_knows_is_refused(string query, string pointer, string code, string suggestion)
    {
        var reply = await service.PostAsync("/v1/ratings" + query, Requests.Ratings());

        Assert.Equal(HttpStatusCode.BadRequest, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal((pointer, code), (fault.Pointer, fault.Code));
        Assert.Contains(suggestion, fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_unknown_address_says_where_the_addresses_are_listed()
    {
        var reply = await service.GetAsync("/v1/nothing");

        Assert.Equal(HttpStatusCode.NotFound, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal("unknown-address", fault.Code);
        Assert.Contains("/v1/nothing", fault.Message, StringComparison.Ordinal);
        Assert.Contains("/docs", fault.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_wrong_method_names_the_right_one()
    {
        var reply = await service.GetAsync("/v1/plans");

        Assert.Equal(HttpStatusCode.MethodNotAllowed, reply.Status);
        var fault = Assert.Single(reply.Errors);
        Assert.Equal(("wrong-method", "Use POST."), (fault.Code, fault.Suggestion));
    }

    [Fact]
    public async Task A_browser_is_told_to_do_nothing_but_show_the_answer()
    {
        var reply = await service.GetAsync("/health");

        Assert.Equal("nosniff", reply.Message.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("DENY", reply.Message.Headers.GetValues("X-Frame-Options").Single());
        Assert.Contains("default-src 'none'", reply.Message.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        Assert.False(reply.Message.Headers.Contains("Server"));
    }
}
