using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A rate table is read with guides that exist, each named once.</summary>
internal sealed class GuideKnownCheck : ITableCheck
{
    public string Code => "guide-known";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        var known = folder.Guides.Select(d => d.Value.Id).ToHashSet(StringComparer.Ordinal);
        foreach (var document in folder.RateTables)
        {
            var seen = new HashSet<string>(StringComparer.Ordinal);
            foreach (var (index, pair) in document.Value.ReadWith.Index())
            {
                var member = string.Create(CultureInfo.InvariantCulture, $"readWith[{index}].guide");
                if (!known.Contains(pair.Guide) && !folder.IsUnread("guide.json"))
                {
                    var near = NearestNames.Of(pair.Guide, known);
                    yield return document.At(member, Code, $"There is no guide \"{pair.Guide}\".{(near.Count > 0 ? $" Did you mean {string.Join(" or ", near)}?" : "")}");
                }
                if (!seen.Add(pair.Guide))
                {
                    yield return document.At(member, Code, $"The guide \"{pair.Guide}\" is named twice.");
                }
            }
        }
    }
}
