using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Mistakes;

/// <summary>A mistake that soil arithmetic invites, worked beside the right way on the same numbers, so that its size can be seen.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">The mistake in a few words.</param>
/// <param name="WhatGoesWrong">What goes wrong and what comes of it.</param>
/// <param name="HowToNotice">How a reader can notice it.</param>
/// <param name="Right">The right way: a formula of the catalogue.</param>
/// <param name="Mistaken">The mistaken way; its result has the right one's unit.</param>
public sealed record CommonMistake(string Id, string Title, string WhatGoesWrong, string HowToNotice, IFormula Right, IFormula Mistaken)
{
    /// <summary>Every symbol that either way takes, the right one's first.</summary>
    public IReadOnlyList<Symbol> Inputs => [.. Right.Inputs.Concat(Mistaken.Inputs).DistinctBy(s => s.Name)];

    /// <summary>Works both ways.</summary>
    /// <param name="inputs">Number by symbol.</param>
    /// <param name="working">Receives two lines; null for none.</param>
    /// <returns>Both results, or a refusal: formula-inputs or formula-no-result, with every fault named.</returns>
    public Answer<MistakeSize> Work(IReadOnlyDictionary<string, double> inputs, WorkingSheet? working = null)
    {
        var unknown = inputs.Keys.Except(Inputs.Select(s => s.Name), StringComparer.Ordinal).Select(name => $"\"{name}\" is not a symbol of this mistake.").ToList();
        if (unknown.Count > 0)
        {
            return Answer<MistakeSize>.Refused("formula-inputs", string.Join(" ", unknown), $"Give exactly these: {string.Join(", ", Inputs.Select(s => s.Unit.Length == 0 ? s.Name : $"{s.Name} ({s.Unit})"))}.");
        }

        working?.Section("The right way");
        return Right.Calculate(Of(Right, inputs), working).Then(right =>
        {
            working?.Section("With the mistake");
            return Mistaken.Calculate(Of(Mistaken, inputs), working).Select(mistaken => new MistakeSize(right, mistaken));
        });
    }

    private static Dictionary<string, double> Of(IFormula formula, IReadOnlyDictionary<string, double> inputs) =>
        formula.Inputs.Where(s => inputs.ContainsKey(s.Name)).ToDictionary(s => s.Name, s => inputs[s.Name], StringComparer.Ordinal);
}
