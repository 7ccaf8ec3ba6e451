using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Ratings;

/// <summary>How another guide reads the same soil test, by its own limits for its own region.</summary>
internal sealed record GuideViewAnswer(GuideNamed Guide, IReadOnlyList<RatingAnswer> Ratings, IReadOnlyList<Fault>? Refused);
