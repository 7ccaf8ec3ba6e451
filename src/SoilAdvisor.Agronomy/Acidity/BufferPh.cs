using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>
/// pH of one named buffer after mixing with soil: from 0 to 14. The buffer is part of the type, so that one buffer's value cannot enter
/// another's formula. Default is 0, which no buffer shows.
/// </summary>
/// <typeparam name="TBuffer">The buffer.</typeparam>
public readonly record struct BufferPh<TBuffer>
    where TBuffer : IBuffer
{
    /// <summary>Makes a buffer pH. Throws outside 0 to 14.</summary>
    /// <param name="value">pH units.</param>
    public BufferPh(double value) => Value = value is >= 0 and <= 14
        ? value
        : throw new ArgumentOutOfRangeException(nameof(value), "A pH lies from 0 to 14.");

    /// <summary>pH units.</summary>
    public double Value { get; }

    /// <summary>A measured reading of this very buffer; refuses another buffer's.</summary>
    /// <param name="reading">The reading.</param>
    public static Answer<BufferPh<TBuffer>> Of(Reading reading) => reading.Method.Procedure == TBuffer.Procedure && reading.Amount.Kind == AmountKind.Measured
        ? Answer<BufferPh<TBuffer>>.Given(new((double)reading.Amount.Number))
        : Answer<BufferPh<TBuffer>>.Refused(
            "buffer-mismatch",
            $"The equation takes the {Words.ProceduresOf(Analyte.BufferPh)!.IdOf(TBuffer.Procedure)} buffer only, measured as a number.",
            "Choose a method made for the buffer of the report. One buffer's value never enters another's equation.");
}
