using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.Agronomy.Certainty;

/// <summary>How likely the ground belongs to one class.</summary>
/// <param name="Index">Index of the class on its scale.</param>
/// <param name="Class">The guide's printed name.</param>
/// <param name="Standing">Where the class stands, in our words.</param>
/// <param name="Probability">The probability; null where the report says only "less than" or "more than" and so gives bounds.</param>
/// <param name="AtLeast">Lowest it can be; the probability itself for a measured number.</param>
/// <param name="AtMost">Highest it can be; the probability itself for a measured number.</param>
public sealed record ClassProbability(int Index, string Class, Standing Standing, Probability? Probability, Probability AtLeast, Probability AtMost);
