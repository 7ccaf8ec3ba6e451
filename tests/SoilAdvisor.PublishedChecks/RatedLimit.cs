using System.Globalization;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

/// <summary>A typed row beside what the library answers.</summary>
/// <param name="Table">Table of the row.</param>
/// <param name="Row">Value and typed class.</param>
/// <param name="Answer">The library's rating or refusal.</param>
public sealed record RatedLimit(LimitTable Table, LimitRow Row, Answer<Rating> Answer)
{
    /// <summary>Typed in place of a class where the value lies outside a reference range, which is not a rating.</summary>
    public const string Outside = "outside the reference range";

    /// <summary>True when the library names the typed class, or leaves out what was typed as outside.</summary>
    public bool Agrees => Answer.IsGiven ? Answer.Value.Class.Name == Row.Class : Row.Class == Outside && Answer.Reason.Code == "outside-reference-range";

    /// <summary>The class or the refusal in words.</summary>
    public string Got => Answer.IsGiven ? Answer.Value.Class.Name : $"refused: {Answer.Reason.Message}";

    /// <summary>Everything a reader needs to doubt a failure.</summary>
    public override string ToString() => string.Create(
        CultureInfo.InvariantCulture,
        $"{Table.Guide}, {Table.Name}: {Row.Value} → typed {Row.Class}, got {Got}. Source: {Table.Source}, {Table.Locator}. Read: {Table.Read}. {Table.Note} File: limits/{LimitTable.FolderOf(Table.Evidence)}/{Table.Guide}.json");
}
