namespace SoilAdvisor.Api.Formulas;

/// <summary>One letter of an equation, with the limits that the publication covers.</summary>
internal sealed record SymbolEntry(string Symbol, string Meaning, string Unit, double? Min, double? Max)
{
    public static SymbolEntry Of(Symbol symbol) => new(symbol.Name, symbol.Meaning, symbol.Unit, symbol.Min, symbol.Max);
}
