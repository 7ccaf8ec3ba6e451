using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Mixtures;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;
using Mass = UnitsNet.Mass;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>POST /v1/cover-crops/seed.</summary>
internal static class SeedEndpoints
{
    private const string UsualSowing = "broadcast";

    public static void MapSeedRates(this IEndpointRouteBuilder routes) => routes
        .MapCalculation<SeedRequest, SeedRateAnswer>("/v1/cover-crops/seed", Answer)
        .WithTags("Cover crops").WithName("CoverCropSeed").WithSummary("Seed of a cover crop or a mixture to weigh out, by pure live seed");

    private static SeedRateAnswer? Answer(SeedRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var area = UnitWords.ReadArea(request.Area, "/area", faults);
        var parts = request.Species is null ? [] : SeedReader.Read(request.Species, calculation.Tables, faults);
        if (faults.Count > 0)
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        if (!SeedMixtures.For(parts, SeedReader.Ways[request.Sowing ?? UsualSowing], area, calculation.Tables.CoverCropRules, sheet).TryGet(out var mixture, out var reason))
        {
            faults.Add("/species", reason);
            return null;
        }

        if (request.Sowing is null)
        {
            calculation.Assume([new Assumption("sown-broadcast", "You did not say how you sow: seed that is thrown and worked in is reckoned with. A drill needs less.", Citation.OurJudgement)]);
        }

        calculation.Assume(mixture.Assumptions);
        var units = calculation.Units;
        return new SeedRateAnswer(
            request.Sowing ?? UsualSowing,
            [.. mixture.Species.Select(s => Write(s, calculation))],
            mixture.TotalShare is { } total ? Units.Rounded(total.Percent) : null,
            units.PerArea(mixture.Seed),
            mixture.ForBed is { } bed ? units.Of(bed) : null,
            Ounces(mixture.ForBed),
            Grams(mixture.ForBed),
            MoneyAnswer.Of(mixture.Cost),
            [.. mixture.Inoculants.Select(i => new InoculantAnswer(i.Group.Value, [.. i.Legumes.Select(l => l.Id)], calculation.Cite(i.Group.Source)))],
            [.. mixture.Warnings.Select(w => new StatementAnswer(w.Value, calculation.Cite(w.Source)))],
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            null,
            calculation.Assumptions(),
            Listed(calculation),
            calculation.Versions(),
            calculation.Cite(Citation.OurArithmetic));
    }

    private static IReadOnlyList<SourceAnswer> Listed(Calculation calculation)
    {
        calculation.Cite(Citation.OurArithmetic);
        return calculation.Bibliography.List();
    }

    private static SownSpeciesAnswer Write(SownSpecies sown, Calculation calculation) => new(
        sown.CoverCrop.Id,
        sown.CoverCrop.Name,
        sown.Share is { } share ? Units.Rounded(share.Percent) : null,
        sown.Full is { } full ? calculation.Units.PerArea(full.Low, full.High) : null,
        calculation.Units.PerArea(sown.PureLive),
        Units.Rounded(sown.PureLiveShare.Percent),
        calculation.Units.PerArea(sown.Seed),
        sown.Seeds is { } seeds ? new Quantity(Units.Rounded(seeds.PerSquareFoot), "seeds/sq ft") : null,
        sown.ForBed is { } bed ? calculation.Units.Of(bed) : null,
        Ounces(sown.ForBed),
        Grams(sown.ForBed),
        MoneyAnswer.Of(sown.Cost),
        Value(sown.Inoculant, calculation),
        Value(sown.Depth, calculation),
        calculation.Cite(sown.RateSource));

    private static PublishedValue? Value(CoverCropValue? value, Calculation calculation) => value is null ? null : CoverCropWriter.Write(value, calculation);

    private static Quantity? Ounces(Mass? mass) => mass is { } m ? new Quantity(Units.Rounded(m.Ounces), "oz") : null;

    private static Quantity? Grams(Mass? mass) => mass is { } m ? new Quantity(Units.Rounded(m.Grams), "g") : null;
}
