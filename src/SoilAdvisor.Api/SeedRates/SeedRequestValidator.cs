using FluentValidation;
using SoilAdvisor.Agronomy.CoverCrops.Mixtures;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SeedRates;

/// <summary>A seed request that can be answered.</summary>
internal sealed class SeedRequestValidator : AbstractValidator<SeedRequest>
{
    public SeedRequestValidator()
    {
        RuleFor(r => r.Sowing)
            .Must(s => s is null || SeedReader.Ways.ContainsKey(s))
            .Else("unknown-sowing", (_, s) => $"\"{Rules.Clip(s)}\" is not a way of sowing.", $"Use: {string.Join(", ", SeedReader.Ways.Keys)}.");
        RuleFor(r => r.Area).SetValidator(new QuantityValidator("The area")!);
        RuleFor(r => r.Species)
            .HasSome("species", "no-species", "Name one to four cover crops.")
            .HasAtMost(SeedMixtures.MostSpecies, "species");
        RuleForEach(r => r.Species).SetValidator(new SpeciesValidator());
    }
}
