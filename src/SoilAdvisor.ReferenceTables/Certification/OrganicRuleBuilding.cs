using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Certification;

/// <summary>From the checked table of rules to the rules.</summary>
internal static class OrganicRuleBuilding
{
    public static IEnumerable<OrganicRule> Build(TableFolder folder) => folder.RowsOf(RowKinds.OrganicRules).Select(row => new OrganicRule(
        row.Needed("id"), row.Needed("standard"), row.Needed("section"), row.Needed("subject"), row.Needed("what_it_asks"), row.Citation()));
}
