using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverSeason;

/// <summary>A season that can be planned.</summary>
internal sealed class SeasonValidator : AbstractValidator<WrittenSeason>
{
    // Five years between crops of a family are the longest rotations ask for.
    private const int MostMonths = 60;

    public SeasonValidator()
    {
        RuleFor(s => s.MostSpecies).IsOptionalNumber("The number of species").IsWhole("The number of species").IsAtLeast(1, "The number of species", "").IsAtMost(Limits.Materials, "The number of species", "");
        RuleFor(s => s.PointsPerSpecies).IsOptionalNumber("The points for a species").IsNotNegative("The points for a species").IsAtMost(100, "The points for a species", "points");
        RuleFor(s => s.FamilyGapMonths).IsOptionalNumber("The family gap").IsWhole("The family gap").IsNotNegative("The family gap").IsAtMost(MostMonths, "The family gap", "months");
        RuleFor(s => s.Seed).HasAtMost(Limits.Materials, "kinds of seed");
        RuleForEach(s => s.Seed).SetValidator(new SeedValidator());
    }
}
