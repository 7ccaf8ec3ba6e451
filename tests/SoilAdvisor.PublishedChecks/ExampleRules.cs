using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.PublishedChecks;

public sealed class ExampleRules
{
    private static readonly string[] Standings = [PublishedExample.Published, PublishedExample.Derived];

    private static readonly string[] DrivenTopics = ["ratings", "rates", "credits", "recommendations", "lime", "conversions", "units", "organic-dates", "cations", "method-conversions", "ceilings", "nitrogen-release"];

    public static TheoryData<string> FormulaIds => [.. Formulas.All.Select(f => f.Id)];

    [Fact]
    public void At_least_sixty_examples_are_published_answers() =>
        Assert.True(PublishedExamples.All.Count(e => e.Standing == PublishedExample.Published) >= 60);

    [Fact]
    public void The_published_answers_come_from_at_least_twenty_publications() =>
        Assert.True(PublishedExamples.All.Where(e => e.Standing == PublishedExample.Published).Select(e => e.Source).Distinct().Count() >= 20);

    [Fact]
    public void No_two_examples_have_the_same_name() =>
        Assert.Empty(PublishedExamples.All.GroupBy(e => $"{e.Topic}/{e.File}/{e.Name}").Where(g => g.Count() > 1).Select(g => g.Key));

    [Fact]
    public void Every_example_drives_a_formula_or_a_part_of_the_library() =>
        Assert.DoesNotContain(PublishedExamples.All, e => e.Formula is null && !DrivenTopics.Contains(e.Topic));

    [Fact]
    public void Every_example_names_its_publication_the_place_in_it_and_what_was_read() =>
        Assert.DoesNotContain(PublishedExamples.All, e =>
            string.IsNullOrWhiteSpace(e.Source) || string.IsNullOrWhiteSpace(e.Locator) || string.IsNullOrWhiteSpace(e.Read) || !Standings.Contains(e.Standing));

    [Fact]
    public void No_example_rests_on_memory() =>
        Assert.DoesNotContain(PublishedExamples.All, e => new[] { e.Source, e.Locator, e.Read, e.Note, e.ToleranceReason }.Any(text =>
            text is not null && (text.Contains("memory", StringComparison.OrdinalIgnoreCase) || text.Contains("recalled", StringComparison.OrdinalIgnoreCase))));

    [Fact]
    public void A_wider_tolerance_has_a_reason_and_a_reason_has_a_wider_tolerance() =>
        Assert.DoesNotContain(PublishedExamples.All, e =>
            e.WiderTolerance is null != e.ToleranceReason is null
            || (e.WiderTolerance is { } wider && e.PrintedDecimals is { } decimals && wider <= 0.5 * Math.Pow(10, -decimals)));

    [Theory]
    [MemberData(nameof(FormulaIds))]
    public void A_formula_has_an_example_or_says_why_none_exists_never_both(string id)
    {
        var formula = Formulas.All.Single(f => f.Id == id);
        var hasPublished = PublishedExamples.All.Any(e => e.Formula == id && e.Standing == PublishedExample.Published);
        Assert.True(hasPublished != (formula.WhyUnchecked is not null), hasPublished
            ? $"{id} has a published example: take its WhyUnchecked away."
            : $"{id} has neither a published example nor a WhyUnchecked.");
    }
}
