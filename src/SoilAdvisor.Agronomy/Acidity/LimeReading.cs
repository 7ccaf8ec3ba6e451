using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The value that a lime table is entered with.</summary>
internal sealed record LimeReading(decimal Value, string Symbol, string Name, string Unit, Func<string, string, Refusal> Outside, Origin From)
{
    /// <summary>The value for a table; refuses where the report does not give it.</summary>
    public static Answer<LimeReading> Of(LimeQuestion question, LimeMethod method)
    {
        switch (method.Reads)
        {
            case LimeReads.Acidity:
                return AcidityOf(question, method).Select(a => new LimeReading(a.Amount.Number, "EA", "exchangeable acidity", "meq/100g", (words, advice) => new Refusal("acidity-outside-method", words, advice), Origin.Given(a.Where)));
            case LimeReads.BufferPh:
                var buffer = question.Test.Of(Analyte.BufferPh)!;
                return Answer<LimeReading>.Given(new LimeReading(buffer.Amount.Number, "BpH", "buffer pH", "pH", (words, advice) => new Refusal("buffer-outside-method", words, advice), Origin.Given(buffer.Where)));
            default:
                return method.SaltScale is null
                    ? Answer<LimeReading>.Given(new LimeReading(question.Ph, "pH", "soil pH", "pH", OutsidePh, question.PhFrom))
                    : SaltPh(question, method);
        }
    }

    /// <summary>The exchangeable acidity in meq/100 g; refuses where the report does not give it.</summary>
    public static Answer<Reading> AcidityOf(LimeQuestion question, LimeMethod method) =>
        question.Test.Of(Analyte.Acidity) is { Amount.Kind: AmountKind.Measured, Unit: ReportingUnit.MilliequivalentsPer100Grams } reading
            ? Answer<Reading>.Given(reading)
            : Answer<Reading>.Refused(
                "acidity-missing",
                $"{method.Title} needs the exchangeable acidity, which the soil test does not give in meq/100g.",
                "Look for exchangeable acidity or exchangeable H on the report and enter it as acidity, meq/100g.");

    /// <summary>Larger for a more acid soil, so that rows of any reading stand in one order.</summary>
    public decimal Acidness(decimal value) => Symbol == "EA" ? value : -value;

    private static Refusal OutsidePh(string words, string advice) => new("ph-outside-method", words, advice);

    private static Answer<LimeReading> SaltPh(LimeQuestion question, LimeMethod method) =>
        question.Test.Of(Analyte.Ph) is { Amount.Kind: AmountKind.Measured } reading && reading.Method.Procedure == method.SaltScale
            ? Answer<LimeReading>.Given(new LimeReading(reading.Amount.Number, "pH", "soil pH", "pH", OutsidePh, Origin.Given(reading.Where)))
            : Answer<LimeReading>.Refused(
                "ph-outside-method",
                $"{method.Title} goes by pH in {Words.ProceduresOf(Analyte.Ph)!.IdOf(method.SaltScale!.Value)}, which the report does not give.",
                "Choose another method, or give the laboratory's lime rate.");
}
