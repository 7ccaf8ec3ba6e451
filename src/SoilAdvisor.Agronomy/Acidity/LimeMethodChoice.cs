using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The methods that a soil test may enter: made for its very buffer, those that were read before those recalled, the nearest first.</summary>
internal static class LimeMethodChoice
{
    /// <summary>Why the soil test cannot enter the method at all; null where it can.</summary>
    public static Refusal? Unfit(LimeQuestion question, LimeMethod method) => method.Kind == LimeMethodKind.LaboratoryOnly
        ? new Refusal("lime-method-not-held", $"The numbers of {method.Title} ({method.Institution}) are not held here.", "Use the lime rate that the laboratory printed: give it with unit and basis.")
        : method.Reads switch
        {
            LimeReads.BufferPh or LimeReads.Acidity => Buffer(question) ?? Mismatch(question, method),
            LimeReads.LimeBufferCapacity => Capacity(question),
            _ => null,
        };

    /// <summary>Methods that the soil test may enter, best first: seen before recalled, then those of the region, then by id.</summary>
    public static IReadOnlyList<LimeMethod> Fitting(LimeQuestion question, IEnumerable<LimeMethod> methods) =>
    [
        .. methods
            .Where(m => !m.IsRough && Unfit(question, m) is null && (m.Limits.Soil != LimeSoil.Organic || question.Test.SoilGroup == SoilGroup.Organic))
            .OrderBy(m => m.Source.Evidence == Evidence.FromMemory)
            .ThenBy(m => !IsOf(m, question.Region))
            .ThenBy(m => m.Id, StringComparer.Ordinal),
    ];

    /// <summary>Tables of texture and pH, for a soil without a buffer.</summary>
    public static IReadOnlyList<LimeMethod> Rough(LimeQuestion question, IEnumerable<LimeMethod> methods) =>
    [
        .. methods
            .Where(m => m.IsRough)
            .OrderBy(m => m.Source.Evidence == Evidence.FromMemory)
            .ThenBy(m => !IsOf(m, question.Region)),
    ];

    /// <summary>Why no method fits, with what to ask the laboratory.</summary>
    public static Refusal WhyNone(LimeQuestion question, IReadOnlyList<LimeMethod> methods)
    {
        if (Buffer(question) is { } none)
        {
            return none;
        }

        var buffer = NamedBuffer(question)!.Value;
        return methods.FirstOrDefault(m => m.Kind == LimeMethodKind.LaboratoryOnly && m.Buffers.Contains(buffer)) is { } pointer
            ? Unfit(question, pointer)!
            : new Refusal(
                "buffer-not-covered",
                $"No method here is made for the {NameOf(buffer)} buffer. Covered: {string.Join(", ", methods.Where(m => m.Kind != LimeMethodKind.LaboratoryOnly).SelectMany(m => m.Buffers).Distinct().Select(NameOf))}.",
                "Give the lime rate that the laboratory prints, with unit and basis.");
    }

    /// <summary>Why this method was taken.</summary>
    public static string Reason(LimeQuestion question, LimeMethod method, IReadOnlyList<LimeMethod> fitting)
    {
        var nearness = IsOf(method, question.Region)
            ? $"it is a method of {question.Region} for this report"
            : "it fits the report, and no method of your own state that was read is held for it";
        var others = fitting.Where(m => m != method).Select(m => m.Title).ToList();
        var rest = others.Count > 0 ? $" Others for the same report: {string.Join(", ", others)}." : "";
        return $"Lime is reckoned by {method.Title} ({method.Institution}), because {nearness}. States differ by a factor of two or more.{rest}";
    }

    private static Refusal? Mismatch(LimeQuestion question, LimeMethod method) => method.Buffers.Contains(NamedBuffer(question)!.Value)
        ? null
        : new Refusal(
            "buffer-mismatch",
            $"{method.Title} is made for the {string.Join(" or ", method.Buffers.Select(NameOf))} buffer; the report names {NameOf(NamedBuffer(question)!.Value)}.",
            "Choose a method made for the buffer of the report. One buffer's value never enters another's table.");

    private static Refusal? Buffer(LimeQuestion question)
    {
        if (question.Test.Of(Analyte.BufferPh) is not { Amount.Kind: not AmountKind.Missing } reading)
        {
            return new Refusal(
                "buffer-missing",
                $"The pH is below the target and the soil test has no buffer pH: the pH says that lime is needed, not how much. {LimeThresholds.Note(question.Ph)}".TrimEnd(),
                "Ask the laboratory for the buffer pH with the buffer's name, or for its lime rate with unit and basis.");
        }

        if (reading.Method.Procedure is null)
        {
            return new Refusal(
                "buffer-name-missing",
                "The buffer pH has no buffer name. Mehlich, SMP, Sikora and Adams-Evans start at different values: the same number means different lime.",
                "Ask the laboratory which buffer it used, or for its lime rate with unit and basis.");
        }

        return reading.Amount.Kind == AmountKind.Measured
            ? null
            : new Refusal("buffer-open", $"The buffer pH is reported as {reading.Amount}; a lime requirement needs the number.", "Ask the laboratory for the measured buffer pH.");
    }

    private static Refusal? Capacity(LimeQuestion question) => question.Test.Of(Analyte.LimeBufferCapacity) switch
    {
        { Amount.Kind: AmountKind.Measured, Method.Procedure: not null } => null,
        { Amount.Kind: AmountKind.Measured } => new Refusal(
            "capacity-kind-missing",
            "The lime buffer capacity does not say whether it was read after 30 minutes or at equilibrium; the same number means about half as much lime again.",
            "Ask the laboratory which of the two it printed."),
        _ => new Refusal(
            "capacity-missing",
            $"The soil test has no lime buffer capacity. {LimeThresholds.Note(question.Ph)}".TrimEnd(),
            "Ask the laboratory for the lime buffer capacity, or for its lime rate with unit and basis."),
    };

    private static Procedure? NamedBuffer(LimeQuestion question) => question.Test.Of(Analyte.BufferPh)?.Method.Procedure;

    private static bool IsOf(LimeMethod method, string? region) => region is not null && method.Regions.Contains(region, StringComparer.Ordinal);

    private static string NameOf(Procedure buffer) => Words.ProceduresOf(Analyte.BufferPh)!.IdOf(buffer);
}
