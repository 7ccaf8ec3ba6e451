using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Every source of a bibliography is used by a table or by the program itself.</summary>
internal sealed class SourceUsedCheck : ITableCheck
{
    // Every folder keeps these: assumptions and formulas cite them whatever the tables hold.
    private static readonly Citation[] OfTheProgram = [Citation.OurArithmetic, Citation.OurJudgement, Citation.CommonPractice, Citation.UnitDefinitions, Citation.AtomicMasses];

    public string Code => "source-used";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        if (folder.Unread.Count > 0)
        {
            return [];
        }
        var used = UsedSource.Of(folder).Select(u => u.Id).Concat(OfTheProgram.Concat(Formulas.All.Select(f => f.Source)).Select(c => c.SourceId)).ToHashSet(StringComparer.Ordinal);
        return folder.Sources.Where(s => !used.Contains(s.Source.Id)).Select(s => s.File.At($"{s.Place}.id", Code, $"No table uses the source \"{s.Source.Id}\". Remove it, or name it where it belongs."));
    }
}
