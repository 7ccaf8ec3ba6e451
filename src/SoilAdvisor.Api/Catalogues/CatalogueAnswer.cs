using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>A whole list.</summary>
internal sealed record CatalogueAnswer<T>(IReadOnlyList<T> Items, IReadOnlyList<AssumptionAnswer> Assumptions, IReadOnlyList<SourceAnswer> Sources, Versions Versions);
