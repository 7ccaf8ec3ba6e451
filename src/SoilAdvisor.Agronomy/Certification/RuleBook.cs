using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>Finds the rule that a material stands under, and turns outcomes into findings.</summary>
internal static class RuleBook
{
    public static Finding Finding(this OrganicRule rule, FindingState state, string message, string? record, bool blocks = false) =>
        new(rule.Id, rule.Standard, rule.Section, state, message, record, blocks, rule.Source);

    /// <summary>A rule that the checks themselves name. Its absence is a fault of the tables, not of the user.</summary>
    public static OrganicRule Named(this IReadOnlyDictionary<string, OrganicRule> rules, string id) =>
        rules.TryGetValue(id, out var rule) ? rule : throw new KeyNotFoundException($"The organic rules table lacks the rule {id}.");

    /// <summary>The rule whose section the material names; among several the one whose id speaks of the material.</summary>
    public static OrganicRule For(this IReadOnlyDictionary<string, OrganicRule> rules, Material material) => rules.Values
        .Select(rule => (Rule: rule, Parts: Parts(rule.Section).Count(part => material.Rule.Contains(part, StringComparison.Ordinal)), All: Parts(rule.Section).Count()))
        .Where(c => c.Parts > 0)
        .OrderByDescending(c => Words(c.Rule.Id).Intersect(Words(material.Id)).Count())
        .ThenByDescending(c => c.Parts == c.All)
        .ThenBy(c => c.All)
        .Select(c => c.Rule)
        .FirstOrDefault()
        ?? new OrganicRule("organic-status", "United States organic regulation (7 CFR part 205)", material.Rule, material.Name, material.Note ?? "", material.Source);

    private static IEnumerable<string> Parts(string section) => section.Split("; ", StringSplitOptions.RemoveEmptyEntries);

    private static string[] Words(string id) => id.Split('-');
}
