using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The one method a buffer reading may enter: made for that buffer, nearest to the farm, best seen.</summary>
internal static class LimeMethodChoice
{
    public static Answer<LimeMethod> For(LimeQuestion question, IEnumerable<LimeMethod> methods, LimeMethod? asked, string? region)
    {
        if (question.Test.Of(Analyte.BufferPh) is not { Amount.Kind: not AmountKind.Missing } reading)
        {
            return Answer<LimeMethod>.Refused(
                "buffer-missing",
                "The pH is below the target and the soil test has no buffer pH: the pH says that lime is needed, not how much.",
                "Ask the laboratory for the buffer pH with the buffer's name, or for its lime rate with unit and basis.");
        }

        if (reading.Method.Procedure is not { } buffer)
        {
            return Answer<LimeMethod>.Refused(
                "buffer-name-missing",
                "The buffer pH has no buffer name. Mehlich, SMP, Sikora and Adams-Evans start at different values: the same number means different lime.",
                "Ask the laboratory which buffer it used, or for its lime rate with unit and basis.");
        }

        if (reading.Amount.Kind != AmountKind.Measured)
        {
            return Answer<LimeMethod>.Refused("buffer-open", $"The buffer pH is reported as {reading.Amount}; a lime requirement needs the number.", "Ask the laboratory for the measured buffer pH.");
        }

        if (asked is not null)
        {
            return asked.Buffer == buffer
                ? Answer<LimeMethod>.Given(asked)
                : Answer<LimeMethod>.Refused(
                    "buffer-mismatch",
                    $"{asked.Title} is made for the {NameOf(asked.Buffer)} buffer; the report names {NameOf(buffer)}.",
                    "Choose a method made for the buffer of the report. One buffer's value never enters another's table.");
        }

        var known = methods.ToList();
        var fitting = known
            .Where(m => m.Buffer == buffer)
            .OrderBy(m => region is not null && m.Regions.Contains(region, StringComparer.Ordinal) ? 0 : 1)
            .ThenBy(m => m.Source.Evidence == Evidence.Seen ? 0 : 1)
            .ToList();
        if (fitting.Count == 0)
        {
            return Answer<LimeMethod>.Refused(
                "buffer-not-covered",
                $"No method here is made for the {NameOf(buffer)} buffer. Covered: {string.Join(", ", known.Select(m => NameOf(m.Buffer)).Distinct())}.",
                "Give the lime rate that the laboratory prints, with unit and basis.");
        }

        question.Assume("lime-method", Reason(fitting, buffer, region), fitting[0].Source);
        return Answer<LimeMethod>.Given(fitting[0]);
    }

    private static string Reason(List<LimeMethod> fitting, Procedure buffer, string? region)
    {
        var method = fitting[0];
        var nearness = region is not null && method.Regions.Contains(region, StringComparer.Ordinal)
            ? $"it is the {NameOf(buffer)} method of {region}"
            : $"the report names the {NameOf(buffer)} buffer, and no method of your own state is held for it";
        var others = fitting.Count > 1 ? $" Others for the same buffer: {string.Join(", ", fitting.Skip(1).Select(m => m.Title))}." : "";
        return $"Lime is reckoned by {method.Title} ({method.Institution}), because {nearness}. States differ by a factor of two or more.{others}";
    }

    private static string NameOf(Procedure buffer) => Words.ProceduresOf(Analyte.BufferPh)!.IdOf(buffer);
}
