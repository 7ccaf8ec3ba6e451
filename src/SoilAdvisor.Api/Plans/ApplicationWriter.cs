using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Plans;

/// <summary>Writes what is spread.</summary>
internal static class ApplicationWriter
{
    public static ApplicationAnswer Write(MaterialApplication application, Bed bed, Calculation calculation) => new(
        application.Offered.Material.Id,
        application.Offered.Material.Name,
        application.PlantingIndex,
        bed.Plantings[application.PlantingIndex].Crop.Id,
        RateAnswer.Of(application.Rate, bed.Area, BedReader.WordOf(bed.Spread), calculation.Units),
        calculation.Units.Of(application.PerBed),
        Write(application.Volume, calculation),
        MoneyAnswer.Of(application.Cost),
        application.When,
        application.SpreadBy is { } day ? Dates.Write(day) : null,
        application.Purpose,
        Shares(application.Offered.Analysis, calculation),
        application.Cap is { } cap ? new CapAnswer(calculation.Units.PerArea(cap.Most), cap.Reason, calculation.Cite(cap.Source)) : null,
        calculation.Cite(Citation.OurArithmetic));

    public static VolumeAnswer? Write(VolumeMeasure? volume, Calculation calculation) =>
        volume is null ? null : new VolumeAnswer(Units.Rounded(volume.Value, 3), volume.Unit, calculation.Cite(volume.Source));

    /// <summary>Shares by mass with every source of each.</summary>
    public static IReadOnlyList<ShareAnswer> Shares(MaterialAnalysis analysis, Calculation calculation)
    {
        var shares = new List<ShareAnswer>();
        foreach (var nutrient in Enum.GetValues<Nutrient>())
        {
            if (!analysis.Planned.TryGetValue(nutrient, out var planned) || (planned == 0 && analysis.High.GetValueOrDefault(nutrient) == 0))
            {
                continue;
            }

            var sources = analysis.Sources.TryGetValue(nutrient, out var cited) && cited.Count > 0 ? cited : [Citation.OurArithmetic];
            shares.Add(new ShareAnswer(
                nutrient.Symbol(),
                Units.Rounded(planned * 100),
                Units.Rounded(analysis.High.GetValueOrDefault(nutrient, planned) * 100),
                [.. sources.Select(s => calculation.Cite(s).Source).Distinct()],
                calculation.Cite(sources[0])));
        }

        return shares;
    }
}
