using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Planning;

/// <summary>Whether the guides that rate a reading say the same of it.</summary>
/// <param name="Analyte">What is rated.</param>
/// <param name="IsUnanimous">True when all of them give it the same standing.</param>
/// <param name="Text">In one plain sentence, naming the guides.</param>
public sealed record GuideAgreement(Analyte Analyte, bool IsUnanimous, string Text);
