using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>The account on one day.</summary>
/// <param name="Day">The day; null where no planting date is known.</param>
/// <param name="AfterPlanting">Days after planting; null at the end of a season whose harvest is not known.</param>
/// <param name="What">What happens then, in words.</param>
/// <param name="Released">Nitrogen released by then, credits in it and tied-up nitrogen taken off.</param>
/// <param name="Wanted">Nitrogen that the guide's split has asked for by then.</param>
public sealed record NitrogenDay(DateOnly? Day, int? AfterPlanting, string What, RateRange Released, RateRange Wanted);
