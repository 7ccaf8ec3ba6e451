using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>A cover crop that fits a gap. It changes no need of the same plan.</summary>
/// <param name="CoverCrop">The species.</param>
/// <param name="Score">Sum of the reasons' points.</param>
/// <param name="Reasons">Reasons for and against, heaviest first.</param>
/// <param name="Window">Its dates in the gap.</param>
/// <param name="Numbers">What it does in numbers.</param>
/// <param name="SeedPerBed">Seed for the bed; null when the tables hold no rate.</param>
/// <param name="SeedRate">Seed rate with unit and source; null when the tables hold none.</param>
/// <param name="DryMatter">Dry matter in words with its range and source; null when the tables hold none.</param>
/// <param name="Phosphorus">Phosphate taken up and returned, in words with range, and the sentence that it is moved, not added; null when nothing is held.</param>
/// <param name="Nitrogen">Nitrogen "if grown and killed then", in words; null when nothing is held.</param>
public sealed record CoverCropChoice(
    CoverCrop CoverCrop,
    double Score,
    IReadOnlyList<CoverCropReason> Reasons,
    CoverWindow Window,
    CoverCropNumbers Numbers,
    Mass? SeedPerBed,
    CoverCropValue? SeedRate,
    Cited<string>? DryMatter,
    Cited<string>? Phosphorus,
    Cited<string>? Nitrogen);
