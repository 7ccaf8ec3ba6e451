using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>No value belongs to two classes of one scale.</summary>
internal sealed class ScaleOverlapCheck : ITableCheck
{
    public string Code => "scale-overlap";

    public IEnumerable<TableProblem> Check(TableFolder folder) => ScaleJunction.Of(folder)
        .Where(j => j.Distance < 0)
        .DistinctBy(j => j.Higher)
        .Select(j => j.Higher.At("lower", Code, $"A value belongs to {j.Lower["class"]} (to {j.Lower["upper"]}) and to {j.Higher["class"]} (from {j.Higher["lower"]}){j.AtCec}. Exactly one side owns a shared limit."));
}
