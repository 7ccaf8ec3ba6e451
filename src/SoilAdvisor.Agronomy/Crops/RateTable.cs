using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>A published table or rule of rates. Useless without a guide whose limits it may be read with.</summary>
/// <param name="Id">Permanent kebab-case id.</param>
/// <param name="Title">Title as printed.</param>
/// <param name="Institution">Who issued it.</param>
/// <param name="Regions">ISO 3166-2 codes.</param>
/// <param name="Kind">How it works.</param>
/// <param name="AreaBasis">What an acre means in it, for example broadcast-acre.</param>
/// <param name="Pairs">Guides it may be read with.</param>
/// <param name="Rates">Its rates; empty for a rule.</param>
/// <param name="Splits">Its printed splits.</param>
/// <param name="Parameters">Coefficients of a rule; empty for a table.</param>
/// <param name="Credits">Credits it prints.</param>
/// <param name="Source">Where it stands.</param>
/// <param name="Notes">Decisions; null for none.</param>
public sealed record RateTable(
    string Id,
    string Title,
    string Institution,
    IReadOnlyList<string> Regions,
    RateTableKind Kind,
    string AreaBasis,
    IReadOnlyList<RatePair> Pairs,
    IReadOnlyList<RateRow> Rates,
    IReadOnlyList<RateSplit> Splits,
    IReadOnlyList<RateParameter> Parameters,
    IReadOnlyList<CreditRow> Credits,
    Citation Source,
    string? Notes)
{
    /// <summary>How this table is read with a guide; null when it may not be.</summary>
    /// <param name="guide">Id of the guide.</param>
    public RatePair? PairWith(string guide) => Pairs.FirstOrDefault(p => p.Guide == guide);
}
