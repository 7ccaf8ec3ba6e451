using System.Globalization;
using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>What fills the exchange of each soil, once a soil test. Information only, and it says so.</summary>
internal static class CationSection
{
    public static IEnumerable<Block> Of(FarmPlan plan)
    {
        var tests = plan.Beds.Where(b => b.Cations is not null).DistinctBy(b => b.Bed.SoilTest.Id).Select(b => (b.Bed.SoilTest.Id, Answer: b.Cations!.Value)).ToList();
        if (tests.Count == 0)
        {
            yield break;
        }

        yield return new Heading(3, "Cations, for information");
        var given = tests.Where(t => t.Answer.IsGiven).Select(t => (t.Id, Balance: t.Answer.Value)).ToList();
        if (given.Count > 0)
        {
            yield return new Paragraph(new Sentence("How much of the exchange each cation fills. Nothing here is a rating, and no rate follows from it.", Citation.OurJudgement));
            yield return new SourcedTable(
                ["Soil test", "Exchange capacity, by sum", "Calcium", "Magnesium", "Potassium", "Sodium", "Acidity", "Weights used"],
                [.. given.Select(t => Row(t.Id, t.Balance))]);
            var said = given.SelectMany(t => t.Balance.Warnings.Select(w => ($"{t.Id}: {w.Text}", w.Source)))
                .Concat(given.SelectMany(t => t.Balance.Trials).Select(t => (t.Text, t.Source)))
                .Concat(given.SelectMany(t => t.Balance.Assumptions).Select(a => (a.Text, a.Source)))
                .Distinct();
            yield return new Bullets([.. said.Select(s => new Paragraph(new Sentence(TradeWords.Sentence(s.Item1), s.Item2)))]);
        }

        var refused = tests.Where(t => !t.Answer.IsGiven).ToList();
        if (refused.Count > 0)
        {
            yield return new Bullets([.. refused.Select(t => new Paragraph(
                new Sentence($"{t.Id}: no sum of cations. {TradeWords.Sentence(t.Answer.Reason.Message)} {TradeWords.Sentence(t.Answer.Reason.Suggestion)}", Citation.OurJudgement)))]);
        }
    }

    private static SourcedRow Row(string test, CationBalance balance) => new(
        [
            test,
            $"{Figure.Short(balance.Capacity)} {balance.Unit}",
            Part(balance, Analyte.Ca),
            Part(balance, Analyte.Mg),
            Part(balance, Analyte.K),
            Part(balance, Analyte.Na),
            Cell.Of(Percent(balance.Acidity.Saturation), $"from {balance.Acidity.From}"),
            balance.Weights.Title,
        ],
        [Citation.OurArithmetic, balance.Weights.Source, balance.Acidity.Source, .. balance.References.Select(r => r.Source)]);

    private static Cell Part(CationBalance balance, Analyte cation)
    {
        var share = balance.Cations.FirstOrDefault(c => c.Cation == cation);
        return share is null ? "not counted" : Cell.Of([
            Percent(share.Saturation),
            .. balance.References.Where(r => r.Cation == cation).Select(r => string.Create(CultureInfo.InvariantCulture, $"printed for information: {r.Low} to {r.High} %")),
        ]);
    }

    private static string Percent(Saturation saturation) => string.Create(CultureInfo.InvariantCulture, $"{saturation.Percent:0.#} %");
}
