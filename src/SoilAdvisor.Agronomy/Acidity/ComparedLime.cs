using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What one method says of a soil. The method with its region stands beside the number.</summary>
/// <param name="Method">The method.</param>
/// <param name="Requirement">Its requirement for its own depth, or why it has none.</param>
/// <param name="ToSixInches">The same for six inches, so that rows can be compared; null where there is none.</param>
public sealed record ComparedLime(LimeMethod Method, Answer<LimeRequirement> Requirement, LimeRequirement? ToSixInches);
