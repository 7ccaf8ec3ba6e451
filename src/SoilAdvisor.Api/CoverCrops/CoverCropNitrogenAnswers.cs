using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>From a cut stand to plant-available nitrogen, through the catalogue's formulas.</summary>
internal static class CoverCropNitrogenAnswers
{
    public static NitrogenAnswer? Answer(NitrogenRequest request, Calculation calculation)
    {
        var faults = calculation.Faults;
        var cover = Named.Read(request.CoverCrop, "/coverCrop", calculation.Tables.CoverCrop, faults);
        for (var i = 0; i < (request.Mixture?.Count ?? 0); i++)
        {
            Named.Read(request.Mixture![i], PointerPath.Down("/mixture", i), calculation.Tables.CoverCrop, faults);
        }

        var sheet = calculation.NewSheet();
        var matter = DryMatter(request, calculation, sheet);
        if (faults.Count > 0 || matter is not { } stand || Percents(request, cover, calculation) is not var (low, high, from))
        {
            return null;
        }

        var (least, most) = (Available(stand, low, from, sheet), low == high ? (MassPerArea?)null : Available(stand, high, from, sheet));
        return new NitrogenAnswer(
            calculation.Units.PerArea(stand),
            calculation.Units.PerArea(MassShare.FromPercent((double)low).In(stand), MassShare.FromPercent((double)high).In(stand)),
            calculation.Units.PerArea(least, most ?? least),
            CoverCropFormulas.PlantAvailableNitrogen.Id,
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

    private static MassPerArea? DryMatter(NitrogenRequest request, Calculation calculation, WorkingSheet? sheet)
    {
        if (request.DryMatter is { } written)
        {
            return BedReader.ReadDryMatter(written, "/dryMatter", calculation.Faults);
        }

        var stands = new List<MassPerArea>();
        for (var i = 0; i < (request.Samples?.Count ?? 0); i++)
        {
            var pointer = PointerPath.Down("/samples", i);
            if (UnitWords.ReadMass(request.Samples![i].Dried, PointerPath.Down(pointer, "dried"), calculation.Faults) is { } dried
                && UnitWords.ReadArea(request.Samples[i].Frame, PointerPath.Down(pointer, "frame"), calculation.Faults) is { } frame)
            {
                stands.Add(CoverCropFormulas.QuadratDryMatter.Of((dried, frame), sheet, Origin.Given(pointer), Origin.Given(pointer)));
            }
        }

        if (stands.Count > 1)
        {
            calculation.Assume([new Assumption("samples-averaged", $"The mean of {stands.Count.ToString(CultureInfo.InvariantCulture)} samples is taken.", Citation.CommonPractice)]);
        }

        return stands.Count == 0 ? null : stands.Aggregate((a, b) => a + b) * (1.0 / stands.Count);
    }

    private static (decimal Low, decimal High, Origin From)? Percents(NitrogenRequest request, CoverCrop? cover, Calculation calculation)
    {
        if (request.NitrogenPercent?.Number is { } measured)
        {
            return (measured, measured, Origin.Given("/nitrogenPercent"));
        }

        if (cover?.ValueOf("nitrogen-percent") is { } published && (published.Low ?? published.Value) is { } low)
        {
            calculation.Assume([new Assumption("nitrogen-percent-published", $"Nitrogen was not measured: the published figure of {cover.Name} is taken.", published.Source)]);
            return (low, published.High ?? published.Value ?? low, Origin.From(published.Source));
        }

        calculation.Faults.Add("/nitrogenPercent", "nitrogen-percent-missing", cover is null ? "The nitrogen of a mixture must be measured." : $"No nitrogen figure of {cover.Name} is held.", "Send a dried sample to a laboratory for total nitrogen and give nitrogenPercent.");
        return null;
    }

    private static MassPerArea Available(MassPerArea stand, decimal percent, Origin from, WorkingSheet? sheet)
    {
        var available = CoverCropFormulas.PlantAvailableNitrogen.Of(MassShare.FromPercent((double)percent), sheet, from);
        return CoverCropFormulas.NitrogenCredit.Of((stand, available), sheet, Origin.Given("dry matter"), Origin.Line(sheet?.LastLine ?? 0)).Amount;
    }
}
