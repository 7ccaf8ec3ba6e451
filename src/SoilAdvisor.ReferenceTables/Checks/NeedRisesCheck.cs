using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>
/// More in the soil never means a higher rate: for a crop, nutrient, texture and condition, through each pair in the order of the guide's
/// classes. A publication that does print a rise is explained in the notes after "monotone: ".
/// </summary>
internal sealed class NeedRisesCheck : ITableCheck
{
    private const string Explained = "monotone: ";

    public string Code => "need-rises";

    public IEnumerable<TableProblem> Check(TableFolder folder) => RatePairing.Of(folder)
        .Where(p => !IsExplained(p.Document.Value.Notes) && !IsExplained(folder.TableIn(p.Document.Folder, RowKinds.Rates)!.Document.Value.Notes))
        .SelectMany(Faults)
        .DistinctBy(problem => (problem.File, problem.Line));

    private static bool IsExplained(string? notes) => notes?.Contains(Explained, StringComparison.Ordinal) ?? false;

    private IEnumerable<TableProblem> Faults(RatePairing pairing) =>
        from rates in pairing.Rates.Where(r => r["class"] is not (null or RatePairing.AnyClass)).GroupBy(r => (Crop: r["crop"], Nutrient: r["nutrient"], Soil: r["soil_group"], Condition: r["condition"]))
        where rates.Key.Nutrient is not null
        from scale in pairing.ScalesOf(rates.Key.Nutrient!)
        let steps = scale.Rows.Select(r => rates.FirstOrDefault(rate => rate["class"] == pairing.Pair.Classes.GetValueOrDefault(r["class"] ?? ""))).OfType<TableRow>().ToList()
        from step in steps.Zip(steps.Skip(1))
        where step.Second.Number("low") > step.First.Number("low") || High(step.Second) > High(step.First)
        select step.Second.At("low", Code, $"{rates.Key.Crop}, {rates.Key.Nutrient}: the rate rises from {Range(step.First)} ({step.First["class"]}) to {Range(step.Second)} ({step.Second["class"]}) {step.Second["unit"]} though the soil holds more. Mend the figure, or explain it in the notes after \"{Explained}\".");

    private static decimal? High(TableRow row) => row.Number("high") ?? row.Number("low");

    private static string Range(TableRow row) => row["high"] is { } high ? $"{row["low"]}-{high}" : row["low"] ?? "";
}
