using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.CoverCrops.Biomass;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>From a stand to plant-available nitrogen, through the catalogue's formulas.</summary>
internal static class CoverCropNitrogenAnswers
{
    private const string Measured = "measured";
    private const string Published = "published-nitrogen";
    private const string Low = "low";

    public static NitrogenAnswer? Answer(NitrogenRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var cover = Named.Read(request.CoverCrop, "/coverCrop", calculation.Tables.CoverCrop, faults);
        _ = StandReader.Species(request.Mixture, "/mixture", calculation.Tables, faults);
        for (var i = 0; i < (request.Parts?.Count ?? 0); i++)
        {
            Named.Read(request.Parts![i].CoverCrop, PointerPath.Down(PointerPath.Down("/parts", i), "coverCrop"), calculation.Tables.CoverCrop, faults);
        }

        var sheet = calculation.NewSheet();
        if (faults.Count > 0
            || StandReader.DryMatter(request.DryMatter, request.Samples, request.Height, request.CoverPercent, cover, "", calculation.Tables, faults, sheet) is not var (stand, estimate)
            || Content(request, cover, stand, calculation, sheet) is not { } content)
        {
            return null;
        }

        if (estimate is not null)
        {
            calculation.Assume([estimate]);
        }

        var (least, most) = (Available(stand, content.Low, content.From, sheet), content.Low == content.High ? (MassPerArea?)null : Available(stand, content.High, content.From, sheet));
        return new NitrogenAnswer(
            calculation.Units.PerArea(stand),
            new PercentRange(Units.Rounded(content.Low.Percent), Units.Rounded(content.High.Percent)),
            calculation.Units.PerArea(content.Low.In(stand), content.High.In(stand)),
            calculation.Units.PerArea(least, most ?? least),
            CoverCropFormulas.PlantAvailableNitrogen.Id,
            estimate is not null ? Low : content.IsMeasured ? Measured : Published,
            WorkingWriter.Write(sheet?.Lines, calculation.Bibliography),
            null,
            calculation.Assumptions(),
            Listed(calculation),
            calculation.Versions(),
            calculation.Cite(CoverCropFormulas.PlantAvailableNitrogen.Source));
    }

    private static IReadOnlyList<SourceAnswer> Listed(Calculation calculation)
    {
        calculation.Cite(CoverCropFormulas.PlantAvailableNitrogen.Source);
        return calculation.Bibliography.List();
    }

    private static NitrogenContent? Content(NitrogenRequest request, CoverCrop? cover, MassPerArea stand, Calculation calculation, WorkingSheet? sheet)
    {
        if (request.NitrogenPercent?.Number is { } measured)
        {
            var share = MassShare.FromPercent((double)measured);
            return new NitrogenContent(share, share, true, Origin.Given("/nitrogenPercent"));
        }

        if (request.Parts is { Count: > 0 } parts)
        {
            return Blended(parts, stand, sheet);
        }

        if (NitrogenContent.Published(cover, request.Stage?.Trim(), calculation.Tables.CoverCropTables) is var (content, said))
        {
            calculation.Assume([said]);
            return content;
        }

        calculation.Faults.Add(
            "/nitrogenPercent",
            "nitrogen-percent-missing",
            cover is null ? "The nitrogen of a mixture must be measured." : $"No nitrogen figure of {cover.Name} is held for the stage that was given, or none was given.",
            $"Send a dried sample to a laboratory for total nitrogen and give nitrogenPercent{(cover is null ? ", or parts with the nitrogen of each species" : $"; or give stage: {string.Join(", ", NitrogenContent.Stages)}")}.");
        return null;
    }

    // Blended first, read off the line once: the mean of the parts' available nitrogen would credit a cereal with nitrogen that it ties up.
    private static NitrogenContent Blended(IReadOnlyList<WrittenStandPart> parts, MassPerArea stand, WorkingSheet? sheet)
    {
        var matter = default(MassPerArea);
        var blend = default(MassShare);
        foreach (var part in parts)
        {
            var (own, nitrogen) = (stand * ((double)part.SharePercent!.Value.Number!.Value / 100), MassShare.FromPercent((double)part.NitrogenPercent!.Value.Number!.Value));
            blend = matter.IsZero ? nitrogen : BiomassFormulas.BlendedNitrogen.Of((matter, blend, own, nitrogen), sheet, Origin.Given("/parts"), Origin.Given("/parts"), Origin.Given("/parts"), Origin.Given("/parts"));
            matter += own;
        }

        return new NitrogenContent(blend, blend, true, parts.Count > 1 ? Origin.Line(sheet?.LastLine ?? 0) : Origin.Given("/parts"));
    }

    private static MassPerArea Available(MassPerArea stand, MassShare content, Origin from, WorkingSheet? sheet)
    {
        var available = CoverCropFormulas.PlantAvailableNitrogen.Of(content, sheet, from);
        return CoverCropFormulas.NitrogenCredit.Of((stand, available), sheet, Origin.Given("dry matter"), Origin.Line(sheet?.LastLine ?? 0)).Amount;
    }
}
