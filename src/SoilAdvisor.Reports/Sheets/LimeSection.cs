using System.Globalization;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Reports.Paper;
using SoilAdvisor.Reports.Wording;

namespace SoilAdvisor.Reports.Sheets;

/// <summary>The lime of a bed: requirement, the stone the plan uses with its doses, and the others.</summary>
internal static class LimeSection
{
    public static IEnumerable<Block> Of(BedPlan bed, Measures measures)
    {
        if (bed.Lime is not { } lime)
        {
            yield break;
        }

        yield return new Heading(4, "Lime");
        yield return Requirement(bed, lime.Requirement, measures);
        if (lime.Requirement.Rate.Amount.IsZero)
        {
            foreach (var sentence in Sulfur(lime))
            {
                yield return new Paragraph(sentence);
            }

            yield break;
        }

        if (lime.Choices.Count == 0)
        {
            yield return new Paragraph(new Sentence("No stone was offered that meets it. Add a calcitic or dolomitic limestone to the materials."));
            yield break;
        }

        yield return new SourcedTable(
            ["Stone", "Rate on the ground spread", "For the bed", "Doses", "Cost", "Why"],
            [.. lime.Choices.Select(c => Stone(c, ReferenceEquals(c, lime.Chosen) || c == lime.Chosen, lime.Requirement, measures))]);
        if (lime.Timing is { } timing)
        {
            yield return new Paragraph(new Sentence(timing.Said, timing.Source));
        }
    }

    // A pH a little above the target is no matter on a bed of ordinary crops: only what is advised, or futile, is said.
    private static IEnumerable<Sentence> Sulfur(LimePlan lime) => lime.Sulfur is { Wanted: true } sulfur
        ? [new Sentence(sulfur.Said, sulfur.Source), .. sulfur.Cautions.Select(c => new Sentence(c, sulfur.Source))]
        : [];

    private static Paragraph Requirement(BedPlan bed, LimeRequirement requirement, Measures measures)
    {
        var target = requirement.Target;
        var crop = target.Crop is { } id ? $" for {BedSheet.CropName(bed, 0, id)}" : " as asked for";
        var limit = target.LimeBelow is { } below ? $"; lime is advised below {Figure.Of(below)}" : "";
        var start = $"Soil pH {Figure.Of(requirement.SoilPh)}, target {Figure.Of(target.Value)}{crop}{limit}.";
        if (requirement.Rate.Amount.IsZero)
        {
            return new Paragraph(new Sentence(start, target.Source), new Sentence("No lime is needed.", requirement.Source));
        }

        var printed = $"{Figure.Of(requirement.PrintedValue)} {requirement.PrintedUnit} of {requirement.Basis}";
        return new Paragraph(
            new Sentence(start, target.Source),
            new Sentence(
                $"Requirement: {measures.Rate(requirement.Rate.Amount)} counted as pure calcium carbonate, for a depth of {Depth(requirement)}; the method ({requirement.Method}) prints {printed}.",
                requirement.Source));
    }

    private static string Depth(LimeRequirement requirement) =>
        $"{Figure.Printed(requirement.Depth.Inches)} in ({Figure.Short(requirement.Depth.Centimeters)} cm)";

    private static SourcedRow Stone(LimeChoice choice, bool used, LimeRequirement requirement, Measures measures) => new(
        [
            used ? Cell.Of(choice.Offered.Material.Name, "used in this plan") : choice.Offered.Material.Name,
            Cell.Of(measures.SpreadRate(choice.Rate)),
            choice.PerBed is { } mass ? Cell.Of(measures.Weight(mass), measures.Scoop(choice.Volume)) : measures.Scoop(choice.Volume),
            Cell.Of([.. choice.Doses.Each.Select((d, i) => string.Create(CultureInfo.InvariantCulture, $"{i + 1}: {measures.Rate(d.Rate)}{(i == 0 ? "" : ", " + LaterDose.When(d))}"))]),
            Measures.Cost(choice.Cost),
            Cell.Of(choice.Reasons),
        ],
        [requirement.Source, choice.How.Source, choice.Doses.Source, .. Citations.Of(choice.Offered), .. choice.Volume is { } volume ? new[] { volume.Source } : Array.Empty<Citation>()]);
}
