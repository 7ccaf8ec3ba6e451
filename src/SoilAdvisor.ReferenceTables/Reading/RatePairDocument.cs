namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>One guide that a rate table may be read with.</summary>
/// <param name="Guide">Id of the guide.</param>
/// <param name="Source">Who says that the two belong together.</param>
/// <param name="Evidence">Evidence word.</param>
/// <param name="Note">Remark.</param>
/// <param name="Classes">The rate table's class by the guide's class.</param>
internal sealed record RatePairDocument(string Guide, SourceReference Source, string Evidence, string? Note, OrderedDictionary<string, string> Classes);
