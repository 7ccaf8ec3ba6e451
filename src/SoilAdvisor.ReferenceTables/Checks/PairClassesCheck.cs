using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A pair leads every class of the guide's scales to a class of the rate table, and names no other class. A build-up rule needs no classes.</summary>
internal sealed class PairClassesCheck : ITableCheck
{
    public string Code => "pair-classes";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. RatePairing.Of(folder).SelectMany(Faults),
        .. from document in folder.RateTables
           where document.Value.Kind == RateTableDocument.BuildUpAndMaintenance
           from pair in document.Value.ReadWith.Index()
           where pair.Item.Classes.Count > 0
           select document.At(string.Create(CultureInfo.InvariantCulture, $"readWith[{pair.Index}].classes"), Code, "A build-up rule reads the value, not the class. Leave the classes empty."),
    ];

    private IEnumerable<TableProblem> Faults(RatePairing pairing)
    {
        var member = $"{pairing.Place}.classes";
        var guide = pairing.ClassedNutrients.SelectMany(pairing.ScalesOf).SelectMany(s => s.Rows).Select(r => r["class"]).OfType<string>().ToHashSet(StringComparer.Ordinal);
        var rates = pairing.Rates.Select(r => r["class"]).OfType<string>().ToHashSet(StringComparer.Ordinal);
        foreach (var missing in guide.Where(name => !pairing.Pair.Classes.ContainsKey(name)))
        {
            yield return pairing.Document.At(member, Code, $"The guide {pairing.Pair.Guide} has the class \"{missing}\", which leads to no class of this table.");
        }
        foreach (var (name, rate) in pairing.Pair.Classes)
        {
            if (!guide.Contains(name))
            {
                yield return pairing.Document.At(member, Code, $"The guide {pairing.Pair.Guide} has no class \"{name}\" on a scale that this table is read with.");
            }
            if (!rates.Contains(rate))
            {
                yield return pairing.Document.At(member, Code, $"\"{name}\" leads to the class \"{rate}\", for which the table has no rate.");
            }
        }
    }
}
