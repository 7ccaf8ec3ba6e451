using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>
/// What the salts of a tested material mean. No publication that was read turns a conductivity into a rate, so a warning is given and never
/// a largest rate; and only where the publication names the extract that was used.
/// </summary>
public static class SaltCheck
{
    /// <summary>The finding; empty where no conductivity was tested.</summary>
    /// <param name="material">The material.</param>
    /// <param name="tested">Its test; null for none.</param>
    /// <param name="limits">Published limits.</param>
    public static IReadOnlyList<MaterialTestFinding> Of(Material material, GrowerAnalysis? tested, IReadOnlyList<SaltLimit> limits)
    {
        if (tested?.Salt is not { } salt)
        {
            return [];
        }

        var found = Invariant($"{PlainNumber.Of(salt.Reading.DecisiemensPerMetre)} dS/m in the {salt.Extract} extract");
        if (limits.FirstOrDefault(l => l.Extract == salt.Extract) is not { } limit)
        {
            return [new MaterialTestFinding(material, "salt", found, $"No published limit for a material in the {salt.Extract} extract is held, and readings in another extract are not the same number. Ask the laboratory how it rates this one; keep salty material off seedlings.", false, Citation.OurJudgement)];
        }

        var above = PlainNumber.Of(limit.Above.DecisiemensPerMetre);
        return [new MaterialTestFinding(
            material,
            "salt",
            found,
            salt.Reading.DecisiemensPerMetre > limit.Above.DecisiemensPerMetre
                ? $"Above {above} dS/m its salts can harm plants. Spread it well before sowing, in small dressings, where rain or water can wash it down; keep it off seedlings and out of potting mixes. No rate is printed, so none is set here."
                : $"At or below {above} dS/m, from where its salts can harm plants. They still add up under cover, where no rain washes them down.",
            false,
            limit.Source)];
    }
}
