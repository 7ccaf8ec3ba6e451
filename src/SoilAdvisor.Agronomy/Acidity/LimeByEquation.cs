using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A requirement by a published equation, its coefficients from the method's table, within the limits its publication states.</summary>
internal static class LimeByEquation
{
    private static readonly decimal[] PennsylvaniaTargets = [6.5m, 7.0m];

    public static Answer<LimeRequirement> Of(LimeQuestion question, LimeMethod method)
    {
        if (method.FormulaId == LimeFormulas.MehlichNorthCarolina.Id)
        {
            return NorthCarolina(question, method);
        }

        if (method.FormulaId == LimeFormulas.ModifiedMehlichPennsylvania.Id)
        {
            return Pennsylvania(question, method);
        }

        return method.FormulaId == LimeFormulas.AdamsEvans.Id
            ? AdamsEvans(question, method)
            : Answer<LimeRequirement>.Refused("unknown-lime-formula", $"{method.Title} names the formula {method.FormulaId}, which is not in the catalogue.", "Check the reference tables.");
    }

    private static Answer<LimeRequirement> NorthCarolina(LimeQuestion question, LimeMethod method)
    {
        var reference = Parameter(method, "reference-ph");
        if (question.Target.Value > reference.Value)
        {
            return TargetOutside(question, method, Invariant($"at most {reference.Value}"));
        }

        var (perUnit, start) = (Parameter(method, "acidity-coefficient"), Parameter(method, "buffer-start-ph"));
        var buffer = question.Test.Of(Analyte.BufferPh)!;
        if (!BufferPh<MehlichBuffer>.Of(buffer).TryGet(out var measured, out var refusal))
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        NoteStart(question, method, buffer, start);
        question.Assume("recent-lime", "No lime of the past year is taken off. If some was spread, list it.", method.Source);
        var acidity = LimeFormulas.AcidityMehlich.Of(
            (Coefficient(perUnit), new BufferPh<MehlichBuffer>((double)start.Value), measured),
            question.Working,
            Origin.From(perUnit.Source),
            Origin.From(start.Source),
            Origin.Given(buffer.Where));
        var rate = LimeFormulas.MehlichNorthCarolina.Of(
            (acidity, Ph(question.Target.Value), Ph(question.Ph), Ph(reference.Value), default),
            question.Working,
            Origin.Line(question.Working?.LastLine ?? 0),
            question.TargetFrom,
            question.PhFrom,
            Origin.From(reference.Source),
            Origin.Given("no lime of the past year was named"));
        return Answer<LimeRequirement>.Given(question.AnswerOf(method, rate.Amount));
    }

    private static Answer<LimeRequirement> Pennsylvania(LimeQuestion question, LimeMethod method)
    {
        if (question.Test.Of(Analyte.Acidity) is not { Amount.Kind: AmountKind.Measured, Unit: ReportingUnit.MilliequivalentsPer100Grams } reading)
        {
            return Answer<LimeRequirement>.Refused(
                "acidity-missing",
                $"{method.Title} needs the exchangeable acidity, which the soil test does not give in meq/100g.",
                "Look for exchangeable acidity or exchangeable H on the report and enter it as acidity, meq/100g.");
        }

        if (question.Target.Value < PennsylvaniaTargets[0])
        {
            return TargetOutside(question, method, "6.5 or 7.0");
        }

        var target = PennsylvaniaTargets.Last(t => t <= question.Target.Value);
        if (target != question.Target.Value)
        {
            question.Assume("lime-table-target", Invariant($"{method.Title} is printed for target pH 6.5 and 7.0; the target {question.Target.Value} is read as {target}."), method.Source);
        }

        if (question.Ph >= target)
        {
            return Answer<LimeRequirement>.Given(question.AnswerOf(method, default));
        }

        var acidity = ExchangeableAcidity.FromMilliequivalentsPer100Grams((double)reading.Amount.Number);
        var rate = target == PennsylvaniaTargets[0]
            ? To65(question, method, reading, acidity)
            : To70(question, method, reading, acidity);
        return Answer<LimeRequirement>.Given(question.AnswerOf(method, rate.Amount));
    }

    private static Rate<CalciumCarbonate> To65(LimeQuestion question, LimeMethod method, Reading reading, ExchangeableAcidity acidity)
    {
        var (perAcidity, limit, fixedRate) = (Parameter(method, "rate-per-acidity-target-6-5"), Parameter(method, "acidity-limit"), Parameter(method, "fixed-rate-target-6-5"));
        if (reading.Amount.Number == limit.Value)
        {
            question.Assume("acidity-at-limit", Invariant($"The publication does not define exactly {limit.Value} meq/100g; the smaller rate is used."), Citation.OurJudgement);
        }

        return LimeFormulas.ModifiedMehlichPennsylvania.Of(
            (Coefficient(perAcidity), ExchangeableAcidity.FromMilliequivalentsPer100Grams((double)limit.Value), Rate<CalciumCarbonate>.FromPoundsPerAcre((double)fixedRate.Value), acidity),
            question.Working,
            Origin.From(perAcidity.Source),
            Origin.From(limit.Source),
            Origin.From(fixedRate.Source),
            Origin.Given(reading.Where));
    }

    private static Rate<CalciumCarbonate> To70(LimeQuestion question, LimeMethod method, Reading reading, ExchangeableAcidity acidity)
    {
        var perAcidity = Parameter(method, "rate-per-acidity-target-7-0");
        return LimeFormulas.ModifiedMehlichPennsylvaniaTo70.Of((Coefficient(perAcidity), acidity), question.Working, Origin.From(perAcidity.Source), Origin.Given(reading.Where));
    }

    private static Answer<LimeRequirement> AdamsEvans(LimeQuestion question, LimeMethod method)
    {
        var phRange = LimeFormulas.AcidSaturationAdamsEvans.Inputs[^1];
        if ((double)question.Ph < phRange.Min || (double)question.Target.Value > phRange.Max)
        {
            return TargetOutside(question, method, Invariant($"and the soil pH from {phRange.Min} to {phRange.Max}"));
        }

        var (perUnit, start, perAcidity, efficiency) = (Parameter(method, "acidity-coefficient"), Parameter(method, "buffer-start-ph"), Parameter(method, "lime-per-acidity"), Parameter(method, "efficiency-factor"));
        var buffer = question.Test.Of(Analyte.BufferPh)!;
        if (!BufferPh<AdamsEvansBuffer>.Of(buffer).TryGet(out var measured, out var refusal))
        {
            return Answer<LimeRequirement>.Refused(refusal);
        }

        NoteStart(question, method, buffer, start);
        var acidity = LimeFormulas.AcidityAdamsEvans.Of(
            (Coefficient(perUnit), new BufferPh<AdamsEvansBuffer>((double)start.Value), measured),
            question.Working,
            Origin.From(perUnit.Source),
            Origin.From(start.Source),
            Origin.Given(buffer.Where));
        var acidityLine = question.Working?.LastLine ?? 0;
        var now = Saturation(question, method, question.Ph, question.PhFrom);
        var nowLine = question.Working?.LastLine ?? 0;
        var atTarget = Saturation(question, method, question.Target.Value, question.TargetFrom);
        var targetLine = question.Working?.LastLine ?? 0;
        var rate = LimeFormulas.AdamsEvans.Of(
            (Coefficient(perAcidity), acidity, now, atTarget, Coefficient(efficiency)),
            question.Working,
            Origin.From(perAcidity.Source),
            Origin.Line(acidityLine),
            Origin.Line(nowLine),
            Origin.Line(targetLine),
            Origin.From(efficiency.Source));
        return WithinAdamsEvans(question, method, acidity, now, rate);
    }

    private static Answer<LimeRequirement> WithinAdamsEvans(LimeQuestion question, LimeMethod method, BufferAcidity<AdamsEvansBuffer> acidity, Coefficient now, Rate<CalciumCarbonate> rate)
    {
        var reported = question.Test.Of(Analyte.CationExchangeCapacity) is { Unit: ReportingUnit.MilliequivalentsPer100Grams, Amount: { Kind: AmountKind.Measured } amount } ? (double)amount.Number : acidity.Value / now.Value;
        var largestCec = Parameter(method, "cec-limit").Value;
        var largestRate = Parameter(method, "rate-limit").Value;
        if (reported >= (double)largestCec || rate.PoundsPerAcre >= (double)largestRate * LimeQuestion.PoundsInShortTon)
        {
            return Answer<LimeRequirement>.Refused(
                "soil-outside-method",
                Invariant($"{method.Title} is meant for coarse soils with a cation exchange capacity below {largestCec} meq/100g and less than {largestRate} ton/acre of lime; this soil has {reported:0.#} meq/100g and would get {rate.PoundsPerAcre / LimeQuestion.PoundsInShortTon:0.##} ton/acre."),
                "Ask the laboratory for its lime rate, or for another buffer.");
        }

        return Answer<LimeRequirement>.Given(question.AnswerOf(method, rate.Amount));
    }

    private static Coefficient Saturation(LimeQuestion question, LimeMethod method, decimal ph, Origin from)
    {
        var (constant, linear, square) = (Parameter(method, "saturation-constant"), Parameter(method, "saturation-linear"), Parameter(method, "saturation-square"));
        return LimeFormulas.AcidSaturationAdamsEvans.Of(
            (Coefficient(constant), Coefficient(linear), Coefficient(square), Ph(ph)),
            question.Working,
            Origin.From(constant.Source),
            Origin.From(linear.Source),
            Origin.From(square.Source),
            from);
    }

    private static void NoteStart(LimeQuestion question, LimeMethod method, Reading buffer, RateParameter start)
    {
        if (buffer.Amount.Number >= start.Value)
        {
            question.Assume("buffer-at-start", Invariant($"The buffer pH {buffer.Amount.Number} is at or above the buffer's start {start.Value}: it found no acidity to neutralise."), method.Source);
        }
    }

    private static Answer<LimeRequirement> TargetOutside(LimeQuestion question, LimeMethod method, string limits) => Answer<LimeRequirement>.Refused(
        "target-outside-method",
        Invariant($"{method.Title} is published for a target pH {limits}; the soil pH is {question.Ph} and the target {question.Target.Value}."),
        "Choose a target or a method within its limits, or give the laboratory's lime rate.");

    private static RateParameter Parameter(LimeMethod method, string symbol) => method.Parameters.First(p => p.Symbol == symbol);

    private static Coefficient Coefficient(RateParameter parameter) => new((double)parameter.Value);

    private static SoilPh Ph(decimal value) => new((double)value);
}
