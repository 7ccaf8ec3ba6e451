using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>A document names the kind that belongs to its place.</summary>
internal sealed class KindKnownCheck : ITableCheck
{
    public string Code => "kind-known";

    public IEnumerable<TableProblem> Check(TableFolder folder) =>
    [
        .. folder.Tables.SelectMany(t => Fault(t.Document, t.Document.Value.Kind, t.Kind.Name)),
        .. folder.RateTables.SelectMany(d => Fault(d, d.Value.Kind, RateTableDocument.ClassTable, RateTableDocument.BuildUpAndMaintenance)),
        .. folder.LimeMethods.SelectMany(d => Fault(d, d.Value.Kind, LimeMethodDocument.Equation, LimeMethodDocument.TargetEquations, LimeMethodDocument.Table, LimeMethodDocument.LaboratoryOnly)),
    ];

    private IEnumerable<TableProblem> Fault(Document document, string kind, params string[] known) =>
        known.Contains(kind) ? [] : [document.At("kind", Code, $"\"{kind}\" is not the kind of table kept here. Write {string.Join(" or ", known)}.")];
}
