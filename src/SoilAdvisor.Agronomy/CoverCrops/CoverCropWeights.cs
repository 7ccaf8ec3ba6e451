using System.Collections.Frozen;
using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>How heavily each kind of reason counts. The weights are ours; a request may change any of them, and 0 leaves the reason in words only.</summary>
public sealed class CoverCropWeights
{
    private static readonly FrozenDictionary<string, double> Usual = new Dictionary<string, double>(StringComparer.Ordinal)
    {
        ["phosphorus"] = 1,
        ["nitrogen"] = 1,
        ["hold-nitrogen"] = 1,
        ["weeds"] = 1,
        ["cover"] = 1,
        ["compaction"] = 1,
        ["pollinators"] = 1,
        ["nematodes"] = 1,
        ["days"] = 1,
        ["winter"] = 1,
        ["frost"] = 1,
        ["warmth"] = 1,
        ["regional-dates"] = 1,
        ["season"] = 1,
        ["family"] = 2,
        ["host"] = 1,
        ["reseeding"] = 1,
        ["seed-cost"] = 1,
        ["ending"] = 1,
        ["toxicity"] = 1,
        ["evidence"] = 1,
        ["next-crop"] = 1,
        ["note"] = 0,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private readonly FrozenDictionary<string, double> weights;

    private CoverCropWeights(FrozenDictionary<string, double> weights) => this.weights = weights;

    /// <summary>The weights of this project.</summary>
    public static CoverCropWeights Standard { get; } = new(Usual);

    /// <summary>Kinds of reasons that have a weight.</summary>
    public static IReadOnlyCollection<string> Kinds => Usual.Keys;

    /// <summary>Every kind with its weight, in the order of their names.</summary>
    public IReadOnlyList<(string Kind, Coefficient Weight)> All => [.. weights.OrderBy(w => w.Key, StringComparer.Ordinal).Select(w => (w.Key, new Coefficient(w.Value)))];

    /// <summary>The standard weights with some changed. Throws for a kind that is not known.</summary>
    /// <param name="changed">Changed weights by kind.</param>
    public static CoverCropWeights With(IReadOnlyDictionary<string, Coefficient> changed)
    {
        var weights = new Dictionary<string, double>(Usual, StringComparer.Ordinal);
        foreach (var (kind, weight) in changed)
        {
            weights[Usual.ContainsKey(kind) ? kind : throw new ArgumentException($"\"{kind}\" is not a kind of reason.", nameof(changed))] = weight.Value;
        }

        return new(weights.ToFrozenDictionary(StringComparer.Ordinal));
    }

    internal double Of(string kind) => weights[kind];
}
