using SoilAdvisor.Agronomy.Mistakes;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Formulas;

namespace SoilAdvisor.Api.Mistakes;

/// <summary>A mistake with the right and the mistaken equation.</summary>
/// <param name="Id">Permanent id.</param>
/// <param name="Title">The mistake in a few words.</param>
/// <param name="WhatGoesWrong">What goes wrong and what comes of it.</param>
/// <param name="HowToNotice">How it can be noticed.</param>
/// <param name="RightFormula">Id of the right formula in the catalogue.</param>
/// <param name="Right">The right equation.</param>
/// <param name="Mistaken">The mistaken equation.</param>
/// <param name="Inputs">Symbols that the two take.</param>
/// <param name="By">Where the right equation stands.</param>
internal sealed record MistakeEntry(
    string Id, string Title, string WhatGoesWrong, string HowToNotice, string RightFormula, string Right, string Mistaken, IReadOnlyList<SymbolEntry> Inputs, CitedAs By) : Sourced(By)
{
    public static MistakeEntry Of(CommonMistake mistake, Bibliography bibliography) => new(
        mistake.Id,
        mistake.Title,
        mistake.WhatGoesWrong,
        mistake.HowToNotice,
        mistake.Right.Id,
        mistake.Right.Shown,
        mistake.Mistaken.Shown,
        [.. mistake.Inputs.Select(SymbolEntry.Of)],
        bibliography.Cite(mistake.Right.Source));
}
