using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>The class of a rate is one that some pair leads to, or "all".</summary>
internal sealed class RateClassKnownCheck : ITableCheck
{
    public string Code => "rate-class-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
        from document in folder.RateTables
        let known = document.Value.ReadWith.SelectMany(p => p.Classes.Values).Append(RatePairing.AnyClass).ToHashSet(StringComparer.Ordinal)
        from row in folder.RowsIn(document.Folder, RowKinds.Rates)
        where row["class"] is { } name && !known.Contains(name)
        select row.At("class", Code, $"No guide leads to the class \"{row["class"]}\". Known: {string.Join(", ", known)}.");
}
