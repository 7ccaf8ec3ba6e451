using SoilAdvisor.Agronomy.CoverCrops;

namespace SoilAdvisor.Planning.CoverSeason;

/// <summary>One cover crop that one gap may grow, in whole numbers for the solver.</summary>
/// <param name="Gap">Place of the gap.</param>
/// <param name="Species">Place of the species.</param>
/// <param name="Choice">What it is.</param>
/// <param name="Hundredths">Its points times a hundred.</param>
/// <param name="Grams">Seed that it takes, rounded up; 0 where no rate is held.</param>
/// <param name="Rank">Its place among the gap's choices; 0 is the best.</param>
internal sealed record SeasonOption(int Gap, int Species, CoverCropChoice Choice, long Hundredths, long Grams, int Rank);
