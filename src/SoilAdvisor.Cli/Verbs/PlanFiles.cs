using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Beds;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Materials;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>The files of a plan: either a whole request, or a lab file with its beds.</summary>
/// <param name="Whole">A whole request; null for a lab file.</param>
/// <param name="LabFile">A lab file; null for a whole request.</param>
/// <param name="Beds">The beds of a lab file.</param>
/// <param name="Materials">The materials; null when none are named.</param>
internal sealed record PlanFiles(JsonObject? Whole, InputFile? LabFile, JsonNode? Beds, JsonNode? Materials)
{
    /// <summary>Reads them. All faults are among the complaints.</summary>
    public static PlanFiles Read(PlanSettings settings, Errand errand)
    {
        var lab = errand.Read(settings.LabFile);
        var materials = settings.Materials is { } list && errand.Read(list) is { } shelf ? MaterialList.Read(shelf, errand.Places, errand.Complaints) : null;
        if (lab is { IsJson: true } && JsonText.Read(lab, errand.Complaints) is JsonObject whole && whole.ContainsKey("beds"))
        {
            errand.Places.NoteDocument("", lab.Name);
            if (settings.Beds is not null)
            {
                errand.Complaints.Add(new("--beds", $"{lab.Name} holds beds already.", "Leave out --beds, or name a lab file without beds."));
            }

            return new PlanFiles(whole, null, null, materials);
        }

        if (settings.Beds is null)
        {
            errand.Complaints.Add(new("--beds", "The beds are missing.", $"Add --beds FILE with a CSV that begins for example \"{Example}\"."));
        }

        var beds = settings.Beds is { } path && errand.Read(path) is { } file ? BedList.Read(file, errand.Places, errand.Complaints) : null;
        return new PlanFiles(null, lab, beds, materials);
    }

    private static string Example => string.Join(",", new[] { BedColumns.Bed, BedColumns.Length, BedColumns.Width, BedColumns.SoilTest, BedColumns.Crops }.Select(c => c.Example));
}
