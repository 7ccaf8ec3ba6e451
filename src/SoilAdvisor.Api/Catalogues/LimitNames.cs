using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>The limits as a list that a client can read before it sends.</summary>
internal static class LimitNames
{
    public static IReadOnlyList<Named> All(Limits limits) =>
    [
        new("body", "Size of a request's body", limits.BodyBytes, "bytes"),
        new("request-time", "Time that one request may take", (decimal)limits.RequestSeconds, "s"),
        new("beds", "Beds of a plan", Limits.Beds, ""),
        new("soil-tests", "Soil tests of a plan, or samples of a lab file", Limits.SoilTests, ""),
        new("readings", "Readings, and recommendations, of one soil test", Limits.Readings, ""),
        new("beside", "Guides named to rate a soil test by, beside the chosen one", Limits.GuidesBeside, ""),
        new("conversions", "Conversions to another method named for one soil test", Limits.Conversions, ""),
        new("materials", "Materials of a plan", Limits.Materials, ""),
        new("entries-per-bed", "Crops, former stands or earlier applications of one bed", Limits.PerBed, ""),
        new("sampled-beds", "Beds compared for composite samples", Limits.SampledBeds, ""),
        new("id-letters", "Letters of an id of yours", Limits.IdLetters, ""),
        new("text-letters", "Letters of any other text", Limits.TextLetters, ""),
        new("variations", "Numbers that a formula is worked for when one symbol is varied", Limits.Variations, ""),
        new("depth", "Levels of nesting in JSON", Limits.Depth, ""),
    ];

    /// <summary>One limit.</summary>
    internal sealed record Named(string Id, string What, decimal Value, string Unit)
    {
        public LimitEntry Entry(Bibliography bibliography) => new(Id, What, Value, Unit, bibliography.Cite(Citation.OurJudgement));
    }
}
