namespace SoilAdvisor.Agronomy.Crops;

/// <summary>One crop on one bed, in the order it will stand there.</summary>
/// <param name="Crop">The crop.</param>
/// <param name="Planted">Sowing or planting date; null when not known.</param>
/// <param name="FirstHarvest">Date of the first harvest; null when not known.</param>
/// <param name="HarvestEnd">Date of the last harvest; null when not known.</param>
/// <param name="ExpectedYield">Expected yield; null when not given.</param>
/// <param name="SoilContact">The grower's statement on soil contact; null takes the crop's.</param>
public sealed record Planting(Crop Crop, DateOnly? Planted, DateOnly? FirstHarvest, DateOnly? HarvestEnd, ExpectedYield? ExpectedYield, SoilContact? SoilContact);
