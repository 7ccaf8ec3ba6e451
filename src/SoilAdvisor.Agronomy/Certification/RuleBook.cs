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

    /// <summary>
    /// The rule whose section the material names. Among several: the one whose id speaks of the material, then the one named first, then
    /// the narrowest. A material that names no section stands under the general line on natural or synthetic substances.
    /// </summary>
    public static OrganicRule For(this IReadOnlyDictionary<string, OrganicRule> rules, Material material) => rules.Values
        .SelectMany(rule => rule.Section.Split("; "), (rule, part) => (Rule: rule, Part: part, At: material.Rule.IndexOf(part, StringComparison.Ordinal)))
        .Where(c => c.At >= 0)
        .OrderByDescending(c => Words(c.Rule.Id).Intersect(Words(material.Id)).Count())
        .ThenBy(c => c.At)
        .ThenByDescending(c => c.Part.Length)
        .ThenBy(c => c.Rule.Section.Length)
        .Select(c => c.Rule)
        .FirstOrDefault()
        ?? rules.Named(material.Status == OrganicStatus.Prohibited ? "synthetic-only-if-listed" : "nonsynthetic-unless-listed");

    private static string[] Words(string id) => id.Split('-');
}
