using System.Text;
using Microsoft.Net.Http.Headers;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>POST /v1/lab-files.</summary>
internal static class LabFileEndpoints
{
    private const string Csv = "text/csv";
    private const string Json = "application/json";

    public static void MapLabFiles(this IEndpointRouteBuilder routes) => routes
        .MapPost("/v1/lab-files", (Delegate)ReadAsync)
        .WithCalculationMetadata<LabFileRequest>().Accepts<string>(Csv, Json).Produces<LabFileAnswer>()
        .WithTags("Lab files").WithName("ReadLabFile").WithSummary("Read a laboratory's results and say what is missing or wrong");

    private static async Task<IResult> ReadAsync(HttpContext context)
    {
        if (RequestBody.WrongType(context.Request, Csv, Json) is { } wrong)
        {
            return wrong.ToResult();
        }

        if (MediaTypeHeaderValue.Parse(context.Request.ContentType).MediaType.Equals(Json, StringComparison.OrdinalIgnoreCase))
        {
            return await Calculations.RunAsync<LabFileRequest, LabFileAnswer>(context, FromJson, Write);
        }

        var (bytes, problem) = await RequestBody.ReadAsync(context);
        if (bytes is null)
        {
            return problem!.ToResult();
        }

        return TextOf(bytes) is { } text
            ? Calculations.Run<LabText, LabFileAnswer>(context, new LabText(text), FromCsv, Write)
            : Problem.Of(StatusCodes.Status400BadRequest, "", "not-utf-8", "The file is not text in UTF-8.", "Save it as CSV in UTF-8; a spreadsheet file is not CSV.").ToResult();
    }

    private static IResult Write(LabFileAnswer answer, Calculation calculation) => TypedResults.Json(answer, ApiJson.TypeOf<LabFileAnswer>());

    private static LabFileAnswer? FromCsv(LabText file, Calculation calculation) =>
        Answer(LabFileReader.Read(file.Text, calculation.Faults), calculation);

    private static LabFileAnswer? FromJson(LabFileRequest request, Calculation calculation)
    {
        var tests = new List<WrittenSoilTest>();
        var faults = calculation.Faults;
        for (var i = 0; i < Math.Min(request.SoilTests?.Count ?? 0, Limits.SoilTests); i++)
        {
            var pointer = PointerPath.Down("/soilTests", i);
            var written = request.SoilTests![i];
            if (SoilTestReader.Read(written, pointer, faults) is not { } read)
            {
                continue;
            }

            if (tests.Exists(t => t.Id!.Trim().Equals(read.Id, StringComparison.Ordinal)))
            {
                faults.Add(PointerPath.Down(pointer, "id"), "duplicate-soil-test", $"The sample {read.Id} stands twice.", "Give each sample its own id.");
                continue;
            }

            var recommendations = written.LabRecommendations?.Where((_, r) => !faults.AnyWithin(PointerPath.Down(PointerPath.Down(pointer, "labRecommendations"), r))).ToList();
            tests.Add(SoilTestWriter.Write(read, written, recommendations));
        }

        return Answer(tests, calculation);
    }

    private static LabFileAnswer? Answer(IReadOnlyList<WrittenSoilTest> tests, Calculation calculation) =>
        tests.All(t => t.Readings!.Count == 0)
            ? null
            : new LabFileAnswer(tests, calculation.Faults.All, Suspicions(tests, calculation), calculation.Assumptions(), calculation.Bibliography.List(), calculation.Versions());

    // Read once more from what is handed back, so that the pointers lead into the answer.
    private static IReadOnlyList<SuspicionAnswer>? Suspicions(IReadOnlyList<WrittenSoilTest> tests, Calculation calculation) => SuspicionWriter.Of(
        tests.Select((written, i) => SoilTestReader.Read(written, PointerPath.Down("/soilTests", i), new FaultList())).OfType<SoilTest>(),
        calculation);

    private static string? TextOf(byte[] bytes)
    {
        try
        {
            var text = new UTF8Encoding(false, true).GetString(bytes);
            return text.Contains('\0', StringComparison.Ordinal) ? null : text.TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }
}
