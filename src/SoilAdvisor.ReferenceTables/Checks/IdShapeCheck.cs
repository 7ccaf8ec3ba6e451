using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>Ids of sources, guides, rate tables and lime methods are kebab-case.</summary>
internal sealed class IdShapeCheck : ITableCheck
{
    public string Code => "id-shape";

    public IEnumerable<TableProblem> Check(TableFolder folder)
    {
        IEnumerable<(Document File, string Place, string Id)> ids =
        [
            .. folder.Sources.Select(s => (s.File, $"{s.Place}.id", s.Source.Id)),
            .. folder.Guides.Select(d => ((Document)d, "id", d.Value.Id)),
            .. folder.RateTables.Select(d => ((Document)d, "id", d.Value.Id)),
            .. folder.LimeMethods.Select(d => ((Document)d, "id", d.Value.Id)),
        ];
        return ids.Where(i => !KebabCase.IsMatch(i.Id)).Select(i => i.File.At(i.Place, Code, $"\"{i.Id}\" is not an id: {KebabCase.Rule}"));
    }
}
