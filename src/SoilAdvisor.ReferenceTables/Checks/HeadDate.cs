using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>One of the three dates of a document: in force from, transcribed, checked against the source.</summary>
/// <param name="Member">Its member.</param>
/// <param name="Words">What it means.</param>
/// <param name="Text">As written; null when it is not known.</param>
/// <param name="Date">The date; null when there is none or it cannot be read.</param>
internal sealed record HeadDate(string Member, string Words, string? Text, DateOnly? Date)
{
    // A publication often prints only the year or the month of its issue; the day is not invented.
    private static readonly string[] PrintedForms = ["yyyy-MM-dd", "yyyy-MM", "yyyy"];

    private static readonly string[] DayForm = ["yyyy-MM-dd"];

    /// <summary>The three, in the order in which they may follow each other.</summary>
    public static IReadOnlyList<HeadDate> Of(ITableHead head) =>
    [
        Read("inForce.from", "in force from", head.InForce.From, PrintedForms),
        Read("transcribed", "transcribed", head.Transcribed, DayForm),
        Read("checkedAgainstSource", "checked against the source", head.CheckedAgainstSource, DayForm),
    ];

    private static HeadDate Read(string member, string words, string? text, string[] forms) => new(
        member,
        words,
        text,
        DateOnly.TryParseExact(text, forms, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null);
}
