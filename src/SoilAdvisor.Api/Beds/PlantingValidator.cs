using FluentValidation;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Beds;

/// <summary>A crop on a bed with dates in order.</summary>
internal sealed class PlantingValidator : AbstractValidator<WrittenPlanting>
{
    public PlantingValidator()
    {
        RuleFor(p => p.Crop).IsText("The crop", "crop-missing", "Name the crop by its id; GET /v1/crops lists them.");
        RuleFor(p => p.PlantingDate).IsOptionalDate("The planting date");
        RuleFor(p => p.FirstHarvest).IsOptionalDate("The first harvest");
        RuleFor(p => p.HarvestEnd).IsOptionalDate("The last harvest");
        RuleFor(p => p.FirstHarvest)
            .Must((p, first) => InOrder(p.PlantingDate, first))
            .Else("date-order", (p, first) => $"The first harvest ({first}) lies before the planting date ({p.PlantingDate}).", "Correct one of the two dates.");
        RuleFor(p => p.HarvestEnd)
            .Must((p, end) => InOrder(p.FirstHarvest, end))
            .Else("date-order", (p, end) => $"The last harvest ({end}) lies before the first ({p.FirstHarvest}).", "Correct one of the two dates.");
        RuleFor(p => p.ExpectedYield).SetValidator(new QuantityValidator("The expected yield")!);
        RuleFor(p => p.Placement)
            .Must(c => c is null or "contact" or "no-contact")
            .Else("unknown-placement", (_, c) => $"\"{Rules.Clip(c)}\" is not a placement.", "Use contact where the edible part touches soil or is splashed by it, no-contact where it does not.");
    }

    /// <summary>True unless both dates are given and the second comes first.</summary>
    public static bool InOrder(string? first, string? second) => Dates.Read(first) is not { } a || Dates.Read(second) is not { } b || a <= b;
}
