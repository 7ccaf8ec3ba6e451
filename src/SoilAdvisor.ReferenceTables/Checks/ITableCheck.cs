using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>One rule that the tables keep.</summary>
internal interface ITableCheck
{
    /// <summary>Its stable kebab-case code, the name of its folder of bad tables.</summary>
    string Code { get; }

    /// <summary>Every breach of it in the folder.</summary>
    IEnumerable<TableProblem> Check(TableFolder folder);
}
