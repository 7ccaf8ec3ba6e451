namespace SoilAdvisor.Api.Tests.LabFiles;

/// <summary>Every sample of docs/lab-file.md, executed.</summary>
public sealed class LabFileDocumentTests(Service service) : IClassFixture<Service>
{
    public static TheoryData<string, string> Samples()
    {
        var samples = new TheoryData<string, string>();
        foreach (var block in MarkdownBlocks.Of("lab-file.md").Where(b => b.Info.StartsWith("csv", StringComparison.Ordinal)))
        {
            samples.Add(block.Info, block.Text);
        }

        return samples;
    }

    [Theory, MemberData(nameof(Samples))]
    public async Task A_sample_is_read_or_refused_as_the_document_says(string info, string csv)
    {
        var reply = await service.PostAsync("/v1/lab-files", csv, "text/csv");

        var expected = info.Split(' ') is [_, "refused", var code] ? [code] : Array.Empty<string>();
        Assert.Equal(expected, reply.Errors.Select(e => e.Code).Distinct());
        Assert.All(reply.Errors, e => Assert.StartsWith("line ", e.Pointer, StringComparison.Ordinal));
    }

    [Fact]
    public void The_document_holds_samples() => Assert.True(Samples().Count > 10);
}
