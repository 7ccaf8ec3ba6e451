using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Weights of reasons as received, from words to types.</summary>
internal static class CoverCropWeightsReader
{
    private const decimal Most = 10;

    /// <summary>The first kind that is not known; null for none.</summary>
    public static string? Unknown(IReadOnlyDictionary<string, WrittenNumber>? weights) => weights?.Keys.FirstOrDefault(k => !CoverCropWeights.Kinds.Contains(k));

    public static bool AreInRange(IReadOnlyDictionary<string, WrittenNumber>? weights) => weights is null || weights.Values.All(w => w.Number is >= 0 and <= Most);

    public static CoverCropWeights Read(IReadOnlyDictionary<string, WrittenNumber>? weights) => weights is null
        ? CoverCropWeights.Standard
        : CoverCropWeights.With(weights.ToDictionary(w => w.Key, w => new Coefficient((double)w.Value.Number!.Value), StringComparer.Ordinal));
}
