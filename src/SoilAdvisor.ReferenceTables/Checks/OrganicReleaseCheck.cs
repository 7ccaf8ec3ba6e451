using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Organic nitrogen by year: a row holds years or their total, the years add up to no more than all of it, and no later year gives more.</summary>
internal sealed class OrganicReleaseCheck : ITableCheck
{
    public string Code => "organic-release";

    public IEnumerable<TableProblem> Check(TableFolder folder) => folder.RowsOf(RowKinds.OrganicRelease).SelectMany(Faults);

    private IEnumerable<TableProblem> Faults(TableRow row)
    {
        decimal?[] years = [row.Number("year_1"), row.Number("year_2"), row.Number("year_3")];
        if (years[0] is null && row.Number("three_years") is null)
        {
            yield return row.At("year_1", Code, "The row holds neither a first year nor a total over three years.");
        }

        if (years.Sum(y => y ?? 0) > 100)
        {
            yield return row.At("year_3", Code, "The years add up to more than all of the organic nitrogen.");
        }

        if (years[1] > years[0])
        {
            yield return row.At("year_2", Code, "The second year gives more than the first. Release falls from year to year.");
        }

        if (years[2] > years[1] || (years[2] is not null && years[1] is null))
        {
            yield return row.At("year_3", Code, "The third year gives more than the second, or stands without it.");
        }

        if (row.Number("dry_matter_from") >= row.Number("dry_matter_below"))
        {
            yield return row.At("dry_matter_below", Code, "The span of dry matter is empty.");
        }
    }
}
