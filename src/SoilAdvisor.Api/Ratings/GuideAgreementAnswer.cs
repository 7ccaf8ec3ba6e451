namespace SoilAdvisor.Api.Ratings;

/// <summary>Whether the guides that rate a reading give it the same standing, in one sentence.</summary>
internal sealed record GuideAgreementAnswer(string Analyte, bool Unanimous, string Text);
