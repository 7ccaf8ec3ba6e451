using FluentValidation;

namespace SoilAdvisor.Api.Http;

/// <summary>Rules that read aloud, each with its permanent code and what to do. The only way in which the Api's validators add a rule.</summary>
internal static class Rules
{
    public static IRuleBuilderOptions<T, TProperty> Else<T, TProperty>(
        this IRuleBuilderOptions<T, TProperty> rule, string code, Func<T, TProperty, string> message, string suggestion) =>
        rule.WithErrorCode(code).WithMessage(message).WithState(_ => suggestion);

    public static IRuleBuilderOptions<T, TProperty> Else<T, TProperty>(
        this IRuleBuilderOptions<T, TProperty> rule, string code, string message, string suggestion) =>
        rule.WithErrorCode(code).WithMessage(message.Replace("{", "{{", StringComparison.Ordinal)).WithState(_ => suggestion);

    /// <summary>Present, and a number in plain digits.</summary>
    public static IRuleBuilderOptions<T, WrittenNumber?> IsNumber<T>(this IRuleBuilderInitial<T, WrittenNumber?> rule, string what) =>
        rule.Cascade(CascadeMode.Stop)
            .NotNull().Else("value-missing", $"{what} has no value.", "Give the number as it was printed, or leave the whole entry out.")
            .IsNumberIfGiven(what);

    /// <summary>A number in plain digits where one is given.</summary>
    public static IRuleBuilderOptions<T, WrittenNumber?> IsOptionalNumber<T>(this IRuleBuilderInitial<T, WrittenNumber?> rule, string what) =>
        rule.Cascade(CascadeMode.Stop).IsNumberIfGiven(what);

    public static IRuleBuilderOptions<T, WrittenNumber?> IsAboveZero<T>(this IRuleBuilderOptions<T, WrittenNumber?> rule, string what) =>
        rule.Must(n => n is null || n.Value.Number > 0)
            .Else("not-above-zero", (_, n) => $"{what} is {n?.Shown}; it must be above 0.", "Give a number above 0.");

    public static IRuleBuilderOptions<T, WrittenNumber?> IsNotNegative<T>(this IRuleBuilderOptions<T, WrittenNumber?> rule, string what) =>
        rule.Must(n => n is null || n.Value.Number >= 0)
            .Else("negative-value", (_, n) => $"{what} is {n?.Shown}; it cannot be below 0.", "Check the sign. A result below detection is written with the comparator \"<\".");

    public static IRuleBuilderOptions<T, WrittenNumber?> IsAtMost<T>(this IRuleBuilderOptions<T, WrittenNumber?> rule, decimal most, string what, string unit) =>
        rule.Must(n => n is null || n.Value.Number <= most)
            .Else("impossible-value", (_, n) => string.Create(CultureInfo.InvariantCulture, $"{what} is {n?.Shown} {unit}; more than {most} {unit} is not possible."), "Check the number and its unit.");

    public static IRuleBuilderOptions<T, WrittenNumber?> IsAtLeast<T>(this IRuleBuilderOptions<T, WrittenNumber?> rule, decimal least, string what, string unit) =>
        rule.Must(n => n is null || n.Value.Number >= least)
            .Else("impossible-value", (_, n) => string.Create(CultureInfo.InvariantCulture, $"{what} is {n?.Shown} {unit}; less than {least} {unit} is not possible."), "Check the number and its unit.");

    public static IRuleBuilderOptions<T, WrittenNumber?> IsWhole<T>(this IRuleBuilderOptions<T, WrittenNumber?> rule, string what) =>
        rule.Must(n => n?.Number is not { } number || number == decimal.Truncate(number))
            .Else("not-whole", (_, n) => $"{what} is {n?.Shown}; it must be a whole number.", "Write a whole number, for example 3.");

    /// <summary>Present text within a length.</summary>
    public static IRuleBuilderOptions<T, string?> IsText<T>(this IRuleBuilderInitial<T, string?> rule, string what, string code, string suggestion, int letters = Limits.IdLetters) =>
        rule.Cascade(CascadeMode.Stop)
            .Must(t => !string.IsNullOrWhiteSpace(t)).Else(code, $"{what} is missing.", suggestion)
            .IsShortIfGiven(what, letters);

    /// <summary>Text within a length where some is given.</summary>
    public static IRuleBuilderOptions<T, string?> IsOptionalText<T>(this IRuleBuilderInitial<T, string?> rule, string what, int letters = Limits.IdLetters) =>
        rule.IsShortIfGiven(what, letters);

    /// <summary>A date as 2026-03-31 where one is given.</summary>
    public static IRuleBuilderOptions<T, string?> IsOptionalDate<T>(this IRuleBuilder<T, string?> rule, string what) =>
        rule.Must(t => t is null || Dates.Read(t) is not null)
            .Else("date-form", (_, t) => $"{what} is \"{Clip(t)}\", which is not a date in the form year-month-day.", "Write it like 2026-03-31, in the years 1900 to 2199.");

    /// <summary>At most so many entries.</summary>
    public static IRuleBuilderOptions<T, IReadOnlyList<TItem>?> HasAtMost<T, TItem>(this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, int most, string what) =>
        rule.Must(list => list is null || list.Count <= most)
            .Else("too-many", (_, list) => string.Create(CultureInfo.InvariantCulture, $"There are {list?.Count} {what}; one request may hold {most}."), "Send several requests.");

    /// <summary>At least one entry.</summary>
    public static IRuleBuilderOptions<T, IReadOnlyList<TItem>?> HasSome<T, TItem>(this IRuleBuilder<T, IReadOnlyList<TItem>?> rule, string what, string code, string suggestion) =>
        rule.Must(list => list is { Count: > 0 }).Else(code, $"There are no {what}.", suggestion);

    public static string Clip(string? text) => text is null ? "" : text.Length > 40 ? text[..40] + "…" : text;

    private static IRuleBuilderOptions<T, WrittenNumber?> IsNumberIfGiven<T>(this IRuleBuilder<T, WrittenNumber?> rule, string what) => rule
        .Must(n => n is not { HasDecimalComma: true })
        .Else("decimal-comma", (_, n) => $"{what} is \"{n?.Shown}\", with a comma.", "Write a decimal point (1.5), and no comma between thousands.")
        .Must(n => n is not { HasComparator: true })
        .Else("comparator-in-value", (_, n) => $"{what} is \"{n?.Shown}\": the sign stands in the number.", "Write {\"value\": 5, \"comparator\": \"<\"}; in a lab file write < 5 in the cell.")
        .Must(n => n is not { IsTooLarge: true })
        .Else("number-too-large", (_, n) => $"{what} is {n?.Shown}, which is too large to be a number of this trade.", "Check the number.")
        .Must(n => n is null || n.Value.Number is not null)
        .Else("not-a-number", (_, n) => $"{what} is \"{n?.Shown}\", which is not a number.", "Write plain digits with a decimal point, without unit or words. Leave the entry out when nothing was reported.");

    private static IRuleBuilderOptions<T, string?> IsShortIfGiven<T>(this IRuleBuilder<T, string?> rule, string what, int letters) =>
        rule.Must(t => t is null || t.Length <= letters)
            .Else("text-too-long", (_, t) => string.Create(CultureInfo.InvariantCulture, $"{what} has {t?.Length} letters; at most {letters} are taken."), "Shorten it.");
}
