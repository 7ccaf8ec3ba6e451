using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>A buffer pH that does not belong to the buffer it is named for. One buffer's value on another's scale is tons of lime.</summary>
internal static class BufferDoubts
{
    // A pH meter is read to 0.1 at best in routine work; a buffer cannot be raised further by a soil.
    private const decimal MeterAllowance = 0.2m;

    // The salt of the buffer lowers the pH of the soil in it by up to about half a unit below that in water.
    private const decimal SaltAllowance = 0.5m;

    public static Suspicion? Above(SoilTest test)
    {
        if (Named(test) is not { } buffer || StartOf(buffer.Name) is not { } start || buffer.Reading.Amount.Number <= start.Value)
        {
            return null;
        }

        var impossible = buffer.Reading.Amount.Number > start.Value + MeterAllowance;
        return new Suspicion(
            impossible ? "buffer-above-its-start" : "buffer-just-above-its-start",
            impossible ? Severity.Impossible : Severity.Suspicion,
            [buffer.Reading],
            Invariant($"The buffer pH is {buffer.Reading.Amount}; the {Id(buffer.Name)} buffer starts at {start.Value} and a soil can only lower it."),
            "Ask the laboratory which buffer it used. SMP and Sikora start at 7.5, Adams-Evans and Moore-Sikora at 8.0, Mehlich at 6.6.",
            start.Source);
    }

    public static Suspicion? Below(SoilTest test)
    {
        if (Named(test) is not { } buffer || LowestOf(buffer.Name) is not { } lowest || buffer.Reading.Amount.Number >= lowest.Value)
        {
            return null;
        }

        return new Suspicion(
            "buffer-below-its-range",
            Severity.Suspicion,
            [buffer.Reading],
            Invariant($"The buffer pH is {buffer.Reading.Amount}; below {lowest.Value} the {Id(buffer.Name)} buffer would mean more acidity than the soils it is made for hold."),
            "Check that the soil pH was not typed in its place, and which buffer the laboratory used.",
            lowest.Source);
    }

    public static Suspicion? UnderTheSoil(SoilTest test)
    {
        if (Named(test) is not { } buffer || StartOf(buffer.Name) is not { } start || test.Of(Analyte.Ph) is not { Amount.Kind: AmountKind.Measured } soil)
        {
            return null;
        }

        return buffer.Reading.Amount.Number < Math.Min(soil.Amount.Number, start.Value) - SaltAllowance
            ? new Suspicion(
                "buffer-below-soil-ph",
                Severity.Suspicion,
                [buffer.Reading, soil],
                Invariant($"The buffer pH {buffer.Reading.Amount} lies more than {SaltAllowance} below the soil pH {soil.Amount}. Mixed with a soil, a buffer ends between its start ({start.Value}) and the pH of the soil."),
                "Check that soil pH and buffer pH are not swapped.",
                Citation.OurJudgement)
            : null;
    }

    private static (Reading Reading, Procedure Name)? Named(SoilTest test) =>
        test.Of(Analyte.BufferPh) is { Amount.Kind: AmountKind.Measured, Method.Procedure: { } name } reading ? (reading, name) : null;

    private static Cited<decimal>? StartOf(Procedure buffer) => buffer switch
    {
        Procedure.BufferMehlich => new(6.6m, new Citation("ncda-bufftab", null, Evidence.Seen)),
        Procedure.BufferModifiedMehlich => new(6.6m, Citation.CommonPractice),
        Procedure.BufferAdamsEvans or Procedure.BufferMooreSikora => new(8.0m, new Citation("clemson-cec", null, Evidence.Seen)),
        Procedure.BufferSmp or Procedure.BufferSikora => new(7.5m, Citation.CommonPractice),
        _ => null,
    };

    // Adams-Evans: 8 × (8.00 − 6.37) is 13 meq/100 g, the largest exchange capacity that a text names for it. The others are wide limits of ours.
    private static Cited<decimal>? LowestOf(Procedure buffer) => buffer switch
    {
        Procedure.BufferMehlich or Procedure.BufferModifiedMehlich => new(3.0m, Citation.OurJudgement),
        Procedure.BufferAdamsEvans or Procedure.BufferMooreSikora => new(6.37m, new Citation("auburn-ae", null, Evidence.Seen)),
        Procedure.BufferSmp or Procedure.BufferSikora => new(4.5m, Citation.OurJudgement),
        _ => null,
    };

    private static string Id(Procedure buffer) => Words.ProceduresOf(Analyte.BufferPh)!.IdOf(buffer);
}
