using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>One entry of a list.</summary>
internal sealed record EntryAnswer<T>(T Item, IReadOnlyList<AssumptionAnswer> Assumptions, IReadOnlyList<SourceAnswer> Sources, Versions Versions);
