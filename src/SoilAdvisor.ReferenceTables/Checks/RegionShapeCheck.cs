using System.Text.RegularExpressions;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Regions are ISO 3166 codes: a country, or a country and its part.</summary>
internal sealed partial class RegionShapeCheck : ITableCheck
{
    public string Code => "region-shape";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        IEnumerable<(Document File, IReadOnlyList<string?> Regions)> lists =
        [
            .. folder.Guides.Select(d => ((Document)d, d.Value.Region)),
            .. folder.RateTables.Select(d => ((Document)d, d.Value.Region)),
            .. folder.LimeMethods.Select(d => ((Document)d, d.Value.Region)),
        ];
        foreach (var (file, regions) in lists)
        {
            if (regions.Count == 0)
            {
                yield return file.At("region", Code, "No region is named. Name those that the publication was written for.");
            }
            foreach (var (index, region) in regions.Index().Where(r => r.Item is null || !Shape().IsMatch(r.Item)))
            {
                yield return file.At(string.Create(CultureInfo.InvariantCulture, $"region[{index}]"), Code, $"\"{region}\" is not an ISO 3166-2 code, such as US-DE.");
            }
        }
    }

    [GeneratedRegex(@"\A[A-Z]{2}(-[A-Z0-9]{1,3})?\z")]
    private static partial Regex Shape();
}
