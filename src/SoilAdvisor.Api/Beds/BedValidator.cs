using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Beds;

/// <summary>A bed that can be read. Whether its measures make an area is the calculation's affair.</summary>
internal sealed class BedValidator : AbstractValidator<WrittenBed>
{
    public BedValidator()
    {
        RuleFor(b => b.Id).IsText("The bed's id", "id-missing", "Give each bed a name of your own.");
        RuleFor(b => b.Length).SetValidator(new QuantityValidator("The length")!);
        RuleFor(b => b.Width).SetValidator(new QuantityValidator("The width")!);
        RuleFor(b => b.Area).SetValidator(new QuantityValidator("The area")!);
        RuleFor(b => b.CenterSpacing).SetValidator(new QuantityValidator("The spacing of bed centres")!);
        RuleFor(b => b.Site)
            .Must(s => s is null or "field" or "high-tunnel")
            .Else("unknown-site", (_, s) => $"\"{Rules.Clip(s)}\" is not a site.", "Use field or high-tunnel.");
        RuleFor(b => b.Crops)
            .HasSome("crops", "crop-missing", "Name at least one crop for the bed.")
            .HasAtMost(Limits.PerBed, "crops on one bed");
        RuleForEach(b => b.Crops).SetValidator(new PlantingValidator());
        RuleFor(b => b.Applied).HasAtMost(Limits.PerBed, "earlier applications on one bed");
        RuleForEach(b => b.Applied).SetValidator(new AppliedValidator());
        RuleFor(b => b.Previous).HasAtMost(Limits.PerBed, "former stands on one bed");
        RuleForEach(b => b.Previous).SetValidator(new StandValidator());
        RuleFor(b => b.Gap).SetValidator(new GapValidator()!);
        RuleFor(b => b.Structure).SetValidator(new YearsAhead.StructureValidator()!);
        RuleFor(b => b.WaterWithinFeet).IsOptionalNumber("The distance to water").IsNotNegative("The distance to water").IsAtMost(100_000, "The distance to water", "ft");
    }
}
