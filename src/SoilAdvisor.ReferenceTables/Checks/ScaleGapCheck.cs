using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>No value falls between two classes; reference ranges, which are not ratings, may leave gaps.</summary>
internal sealed class ScaleGapCheck : ITableCheck
{
    public string Code => "scale-gap";

    public IEnumerable<TableProblem> Check(TableFolder folder) => ScaleJunction.Of(folder)
        .Where(j => j.Distance > 0 && !j.Scale.IsInformation)
        .DistinctBy(j => j.Higher)
        .Select(j => j.Higher.At("lower", Code, $"Between {j.Lower["class"]} (to {j.Lower["upper"]}) and {j.Higher["class"]} (from {j.Higher["lower"]}) a value belongs to no class{j.AtCec}. Exactly one side owns a shared limit; whole-number steps need printed_decimals."));
}
