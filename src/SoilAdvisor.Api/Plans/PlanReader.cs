using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.FieldWork;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.NitrogenSupply;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Plans;

/// <summary>Turns a plan request into types. Faulty tests, beds and materials are left out and said; the rest is planned.</summary>
internal static class PlanReader
{
    private static readonly string[] Lists = ["/soilTests/", "/beds/", "/materials/"];

    /// <summary>What can be planned; null when the request as a whole is faulty or no bed is left.</summary>
    public static PlanRead? Read(PlanRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var tests = ReadTests(request, faults);
        var beds = ReadBeds(request, tests, calculation);
        var materials = MaterialReader.Read(request.Materials, "/materials", calculation.Tables, faults);
        var guide = GuideOf.Read(request.Guide, calculation);
        var season = SeasonReader.ReadWish(request.Options?.CoverSeason, "/options/coverSeason", calculation.Tables, faults);
        var limeMethod = Named.Read(request.Options?.LimeMethod, "/options/limeMethod", calculation.Tables.LimeMethod, faults);
        var metalRule = Named.Read(request.Options?.MetalRule, "/options/metalRule", calculation.Tables.MetalRule, faults);
        var measures = MeasuresReader.Read(request.Options?.Measures, "/options/measures", faults);
        if (beds.Count == 0 || faults.All.Any(IsOfWhole))
        {
            return null;
        }

        var date = Dates.Read(request.Options?.Date);
        if (date is null)
        {
            calculation.Assume([new Assumption("date-of-request", $"No date was given: the plan is made for {Dates.Write(calculation.Today)}.", Citation.OurJudgement)]);
        }

        return new PlanRead(
            new FarmRequest(
                request.Farm, date ?? calculation.Today, guide, request.Region, [.. beds.Select(b => b.Bed)], materials,
                request.Options?.Currency, BedReader.ReadFrost(request.Options?.Frost), limeMethod, calculation.Asked.Working, request.Subregion)
            {
                Years = (int?)request.Options?.Years?.Number,
                Climate = ClimateReader.Read(request.Options?.Climate, request.Options?.Frost, request.Region),
                CoverCropWeights = CoverCropWeightsReader.Read(request.Options?.CoverCropWeights),
                SoilTemperature = SoilTemperatureReader.Read(request.Options?.SoilTemperature, "/options/soilTemperature", faults),
                Measures = measures,
                MetalRule = metalRule,
                CoverSeason = season,
                Limits = FarmLimitsReader.Read(request.Options?.Limits, "/options/limits", faults),
            },
            [.. beds.Select(b => b.Index)],
            tests);
    }

    /// <summary>The soil tests of a request by id, each with its place; a faulty one has none.</summary>
    public static Dictionary<string, TestRead> ReadTests(PlanRequest request, FaultList faults)
    {
        var tests = new Dictionary<string, TestRead>(StringComparer.Ordinal);
        for (var i = 0; i < Math.Min(request.SoilTests?.Count ?? 0, Limits.SoilTests); i++)
        {
            var pointer = PointerPath.Down("/soilTests", i);
            var read = SoilTestReader.Read(request.SoilTests![i], pointer, faults);
            if (request.SoilTests[i].Id?.Trim() is { Length: > 0 } id && !tests.TryAdd(id, new TestRead(read, pointer)))
            {
                faults.Add(PointerPath.Down(pointer, "id"), "duplicate-soil-test", $"The soil test {Rules.Clip(id)} stands twice.", "Give each soil test its own id.");
            }
        }

        return tests;
    }

    private static List<(Bed Bed, int Index)> ReadBeds(PlanRequest request, Dictionary<string, TestRead> tests, Calculation calculation)
    {
        var faults = calculation.Faults;
        var beds = new List<(Bed, int)>();
        var ids = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < Math.Min(request.Beds?.Count ?? 0, Limits.Beds); i++)
        {
            var pointer = PointerPath.Down("/beds", i);
            var written = request.Beds![i];
            var test = TestOf(written, PointerPath.Down(pointer, "soilTest"), tests, faults);
            if (written.Id?.Trim() is { Length: > 0 } id && !ids.Add(id))
            {
                faults.Add(PointerPath.Down(pointer, "id"), "duplicate-bed", $"The bed {Rules.Clip(id)} stands twice.", "Give each bed its own id.");
            }

            if (BedReader.Read(written, test, request.Region, pointer, calculation.Tables, faults) is { } bed)
            {
                beds.Add((bed, i));
            }
        }

        return beds;
    }

    private static SoilTest? TestOf(WrittenBed bed, string pointer, Dictionary<string, TestRead> tests, FaultList faults)
    {
        if (bed.SoilTest?.Trim() is not { Length: > 0 } id)
        {
            faults.Add(pointer, "soil-test-missing", "The bed names no soil test.", "Give soilTest the id of one of the soilTests.");
            return null;
        }

        if (!tests.TryGetValue(id, out var test))
        {
            var near = NearestNames.Of(id, tests.Keys);
            faults.Add(pointer, "unknown-soil-test", $"\"{Rules.Clip(id)}\" is not the id of a soil test in this request.", near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : "Send the soil test in soilTests.");
            return null;
        }

        if (test.Test is null)
        {
            faults.Add(pointer, "soil-test-refused", $"The soil test {Rules.Clip(id)} has faults, so the bed cannot be planned.", $"Correct the faults at {test.Pointer}.");
        }

        return test.Test;
    }

    private static bool IsOfWhole(Fault fault) => !Lists.Any(list => fault.Pointer.StartsWith(list, StringComparison.Ordinal));
}
