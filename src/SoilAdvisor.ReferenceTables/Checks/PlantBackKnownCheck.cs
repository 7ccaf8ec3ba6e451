using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A wait before the next crop names cover crops, crops or families that are written: a misspelt one would never apply.</summary>
internal sealed class PlantBackKnownCheck : ITableCheck
{
    public string Code => "plant-back-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. Faults(folder, "cover_crops", RowKinds.CoverCrops),
        .. Faults(folder, "next_crops", RowKinds.Crops),
    ];

    private IEnumerable<TableProblem> Faults(TableFolder folder, string column, RowKind defines)
    {
        if (folder.IsUnread(defines))
        {
            return [];
        }

        var known = folder.IdsOf(defines).Concat(folder.RowsOf(defines).Select(r => r["family"]).OfType<string>()).ToHashSet(StringComparer.Ordinal);
        return from row in folder.RowsOf(RowKinds.CoverCropPlantBack)
               from name in row.Parts(column)
               where !known.Contains(name)
               select row.At(column, Code, $"\"{name}\" is neither an id nor a family of {defines.Home}/{defines.FileName}.csv.{(NearestNames.Of(name, known) is { Count: > 0 } near ? $" Did you mean {string.Join(" or ", near)}?" : "")}");
    }
}
