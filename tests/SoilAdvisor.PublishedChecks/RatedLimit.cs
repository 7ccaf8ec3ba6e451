using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;

namespace SoilAdvisor.PublishedChecks;

/// <summary>A typed row beside what the library answers.</summary>
/// <param name="Table">Table of the row.</param>
/// <param name="Row">Value and typed class.</param>
/// <param name="Scale">Scale that the library read; null when it read none.</param>
/// <param name="ClassIndex">Class on that scale; -1 for none.</param>
/// <param name="Cec">Exchange capacity that the limits were computed for, meq/100 g; null where it plays no part.</param>
/// <param name="Refusal">Why there is no class; null when there is one.</param>
public sealed record RatedLimit(LimitTable Table, LimitRow Row, RatingScale? Scale, int ClassIndex, decimal? Cec, string? Refusal)
{
    /// <summary>Typed in place of a class where the value lies outside a reference range, which is not a rating.</summary>
    public const string Outside = "outside the reference range";

    /// <summary>The class that the library names; null for none.</summary>
    public RatingClass? Class => Scale is not null && ClassIndex >= 0 ? Scale.Classes[ClassIndex] : null;

    /// <summary>True when the library names the typed class, or leaves out what was typed as outside.</summary>
    public bool Agrees => (Class?.Name ?? Refusal) == Row.Class;

    /// <summary>Everything a reader needs to doubt a failure.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Table.Guide}, {Table.Name}: {Row.Value} → typed {Row.Class}, got {Class?.Name ?? Refusal}. Source: {Table.Source}, {Table.Locator}. Read: {Table.Read}. {Table.Note} File: limits/{LimitTable.FolderOf(Table.Evidence)}/{Table.Guide}.json");
}
