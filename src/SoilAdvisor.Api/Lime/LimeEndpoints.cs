using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;
using SoilAdvisor.Planning;
using SoilAdvisor.ReferenceTables;
using UnitsNet;

namespace SoilAdvisor.Api.Lime;

/// <summary>POST /v1/lime.</summary>
internal static class LimeEndpoints
{
    public const string Ground = "ground-spread";

    public static void MapLime(this IEndpointRouteBuilder routes) => routes
        .MapCalculation<LimeRequest, LimeAnswer>("/v1/lime", Answer)
        .WithTags("Lime").WithName("LimeRequirement").WithSummary("How much lime a soil needs, and which stones meet it");

    internal static LimeAnswer? Answer(LimeRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var test = request.SoilTest is { } written ? SoilTestReader.Read(written, "/soilTest", faults) : null;
        var crops = Crops(request, calculation);
        var method = Named.Read(request.Method, "/method", calculation.Tables.LimeMethod, faults);
        var compared = LimeComparison.Read(request.Methods, test, calculation);
        var depth = UnitWords.ReadLength(request.Depth, "/depth", faults);
        var area = UnitWords.ReadArea(request.Area, "/area", faults);
        var materials = MaterialReader.Read(request.Materials, "/materials", calculation.Tables, faults);
        var recent = Recent(request.RecentLime, calculation);
        if (test is null || faults.All.Any(f => !f.Pointer.StartsWith("/soilTest/readings/", StringComparison.Ordinal) && !f.Pointer.StartsWith("/materials/", StringComparison.Ordinal)))
        {
            return null;
        }

        var sheet = calculation.NewSheet();
        if (!Target(test, crops, request.TargetPh?.Number, calculation.Tables, request.Region).TryGet(out var target, out var noTarget))
        {
            faults.Add("/soilTest", noTarget);
            return null;
        }

        var asked = new LimeAsked(
            test, target, request.TargetPh is not null, method ?? FirstFitting(request, compared, test), request.Region, Magnesium(test, request, crops, calculation), crops,
            Offered(materials, request.Materials is not null, calculation))
        {
            Depth = depth,
            OnSurface = request.Incorporation == "surface",
            Recent = recent is null ? [] : [recent],
            Start = Dates.Read(request.Date),
            Area = area,
        };
        if (!LimeWalk.For(asked, calculation.Tables, sheet).TryGet(out var outcome, out var reason))
        {
            faults.Add("/soilTest", reason);
            return null;
        }

        return Write(outcome, asked, compared, materials, sheet, calculation);
    }

    private static LimeAnswer Write(LimeOutcome outcome, LimeAsked asked, IReadOnlyList<LimeMethod> compared, IReadOnlyList<MaterialOffer> listed, WorkingSheet? sheet, Calculation calculation)
    {
        calculation.Assume(outcome.Requirement.Assumptions);
        foreach (var choice in outcome.Selection.Choices)
        {
            calculation.Assume(choice.Offered.Analysis.Assumptions);
            calculation.Assume(choice.How.Noticed);
        }

        IEnumerable<Material> known = listed.Count > 0 ? listed.Select(m => m.Material) : calculation.Tables.Materials.Values;
        return new LimeAnswer(
            LimeWriter.Write(outcome.Requirement, asked.Area, Ground, calculation),
            compared.Count > 0 ? [.. compared.Select(m => LimeComparison.Of(m, asked, calculation))] : null,
            outcome.Requirement.Lime.IsZero ? null : LimeComparison.Spread(calculation),
            [.. outcome.Selection.Choices.Select(c => LimeWriter.Write(c, asked.Area, Ground, calculation))],
            [.. outcome.Selection.Excluded.Concat(outcome.Requirement.Lime.IsZero ? [] : LimeChoices.NeverLime(known)).Select(e => LimeWriter.Write(e, calculation))],
            SulfurWriter.Write(outcome.Sulfur, asked.Area, Ground, calculation),
            LimeWriter.Write(outcome.Timing, calculation),
            Cautions(outcome, calculation),
            [.. outcome.Requirement.Assumptions.Where(a => a.Code is "recent-lime-amount-unknown" or "recent-lime-not-credited").Select(a => a.Text)],
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            calculation.Faults.Count > 0 ? calculation.Faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    // What the first choice asks of the hands that spread it.
    private static List<LimeStatementAnswer> Cautions(LimeOutcome outcome, Calculation calculation) =>
    [
        .. outcome.Selection.Choices.Take(1).SelectMany(c => c.Offered.Material.Cautions).Select(c => new LimeStatementAnswer(c.Text, calculation.Cite(c.Source))),
    ];

    private static List<Crop> Crops(LimeRequest request, Calculation calculation) =>
    [
        .. new[] { Named.Read(request.Crop, "/crop", calculation.Tables.Crop, calculation.Faults) }
            .Concat((request.Crops ?? []).Take(Limits.PerBed).Select((id, i) => Named.Read(id, PointerPath.Down("/crops", i), calculation.Tables.Crop, calculation.Faults)))
            .OfType<Crop>(),
    ];

    private static EarlierLime? Recent(WrittenRecentLime? written, Calculation calculation)
    {
        if (Dates.Read(written?.Date) is not { } date)
        {
            return null;
        }

        var faults = calculation.Faults;
        var material = Named.Read(written!.Material, "/recentLime/material", calculation.Tables.Material, faults);
        var amount = UnitWords.ReadRate(written.Amount, "/recentLime/amount", faults);
        var share = 1.0;
        if (material is not null && MaterialAnalyses.For(material, null, null).TryGet(out var analysis, out _))
        {
            share = analysis.Share(Nutrient.CalciumCarbonate);
        }

        return new EarlierLime(
            material?.Name ?? "Lime, counted as calcium carbonate equivalent",
            amount is { } spread ? new Rate<CalciumCarbonate>(spread * share) : null,
            date);
    }

    // Of several methods that are named the first made for the buffer of the report gives the amount. "all" names none: the usual choice holds.
    private static LimeMethod? FirstFitting(LimeRequest request, IReadOnlyList<LimeMethod> compared, SoilTest test) => LimeComparison.IsAll(request.Methods)
        ? null
        : compared.FirstOrDefault(m => test.Of(Analyte.BufferPh)?.Method.Procedure is { } buffer && m.Buffers.Contains(buffer));

    private static Answer<TargetPhAnswer> Target(SoilTest test, IReadOnlyList<Crop> crops, decimal? asked, Tables tables, string? region) =>
        TargetPhChoice.For([.. crops.Select(c => new Planting(c, null, null, null, null, null))], test, asked, tables.TargetPhs, region);

    private static List<OfferedMaterial> Offered(IReadOnlyList<MaterialOffer> materials, bool listed, Calculation calculation)
    {
        var offers = listed ? materials : calculation.Tables.Materials.Values.Where(m => m.Category == "lime" && m.Status != OrganicStatus.Prohibited).Select(m => new MaterialOffer(m, null, null, null));
        var ready = new List<OfferedMaterial>();
        foreach (var offer in offers)
        {
            var made = MaterialAnalyses.For(offer.Material, null, offer.Tested)
                .Then(a => OfferedMaterials.For(offer.Material, a, offer.PricePerKilogram, Mass.FromKilograms(1), offer.OnHand, listed));
            if (made.TryGet(out var one, out var reason))
            {
                ready.Add(one);
            }
            else if (listed)
            {
                calculation.Faults.Add("/materials", reason);
            }
        }

        return ready;
    }

    // Magnesium decides between dolomitic and calcitic stone; without a guide that rates it the stones are given in the order of the rest.
    private static Rating? Magnesium(SoilTest test, LimeRequest request, IReadOnlyList<Crop> crops, Calculation calculation)
    {
        if (test.Of(Analyte.Mg) is not { } reading)
        {
            return null;
        }

        var asked = GuideOf.Read(request.Guide, calculation);
        var guide = GuideChoice.For([test], asked, request.Region, [.. crops.Select(c => c.Id)], calculation.Tables);
        if (!guide.TryGet(out var chosen, out _) || !chosen.Guide.Rate(test, reading, new RatingContext(crops.Count > 0 ? crops[0].Id : null, null, null)).TryGet(out var rating, out _))
        {
            return null;
        }

        calculation.Assume([new Assumption("magnesium-by-guide", $"Magnesium is {rating.Class.Name} by {chosen.Guide.Id}, which orders the stones. {chosen.Reason}", rating.Source), .. rating.Assumptions]);
        return rating;
    }
}
