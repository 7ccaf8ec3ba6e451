using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Beds;

/// <summary>Turns a bed list into the beds of a plan request. It reads shapes only; whether a bed makes sense is judged by the service.</summary>
internal static class BedList
{
    /// <summary>The beds; null when the list cannot be read. All faults are among the complaints.</summary>
    public static JsonNode? Read(InputFile file, Places places, List<Complaint> complaints)
    {
        if (file.IsJson)
        {
            places.NoteDocument("/beds", file.Name);
            return JsonText.Read(file, complaints);
        }

        if (Sheet.Read(file, BedColumns.All, complaints) is not { } sheet)
        {
            return null;
        }

        var beds = new JsonArray();
        for (var i = 0; i < sheet.Rows.Count; i++)
        {
            places.Note($"/beds/{i}", $"{sheet.File} line {sheet.Rows[i].Line}");
            beds.Add(Bed(new Cells(sheet, sheet.Rows[i], $"/beds/{i}", places, complaints)));
        }

        return beds;
    }

    private static JsonObject Bed(Cells cells) => Members.Of(
        ("id", cells.Text("id", BedColumns.Bed)),
        ("length", cells.Measure("length", BedColumns.Length)),
        ("width", cells.Measure("width", BedColumns.Width)),
        ("area", cells.Measure("area", BedColumns.Area)),
        ("centerSpacing", cells.Measure("centerSpacing", BedColumns.CentreSpacing)),
        ("spread", cells.Text("spread", BedColumns.Spread)),
        ("soilTest", cells.Text("soilTest", BedColumns.SoilTest)),
        ("site", cells.Text("site", BedColumns.Site)),
        ("crops", Crops(cells)),
        ("applied", Applied(cells)),
        ("previous", Previous(cells)),
        ("gap", Gap(cells)),
        ("structure", Structure(cells)),
        ("waterWithinFeet", cells.Text("waterWithinFeet", BedColumns.WaterWithin)));

    private static JsonArray? Crops(Cells cells)
    {
        var crops = cells.List(BedColumns.Crops);
        var planted = cells.ListBeside(BedColumns.PlantingDates, BedColumns.Crops, crops.Count);
        var first = cells.ListBeside(BedColumns.FirstHarvests, BedColumns.Crops, crops.Count);
        var last = cells.ListBeside(BedColumns.LastHarvests, BedColumns.Crops, crops.Count);
        var placements = cells.ListBeside(BedColumns.Placements, BedColumns.Crops, crops.Count);
        var yields = cells.ListBeside(BedColumns.ExpectedYields, BedColumns.Crops, crops.Count);
        return Each(crops.Count, i => Members.Of(
            ("crop", cells.Entry($"crops/{i}/crop", BedColumns.Crops, crops[i])),
            ("plantingDate", cells.Entry($"crops/{i}/plantingDate", BedColumns.PlantingDates, planted[i])),
            ("firstHarvest", cells.Entry($"crops/{i}/firstHarvest", BedColumns.FirstHarvests, first[i])),
            ("harvestEnd", cells.Entry($"crops/{i}/harvestEnd", BedColumns.LastHarvests, last[i])),
            ("expectedYield", cells.Measure($"crops/{i}/expectedYield", BedColumns.ExpectedYields, yields[i])),
            ("placement", cells.Entry($"crops/{i}/placement", BedColumns.Placements, placements[i]))));
    }

    private static JsonArray? Applied(Cells cells)
    {
        var materials = cells.List(BedColumns.Applied);
        var amounts = cells.ListBeside(BedColumns.AppliedAmount, BedColumns.Applied, materials.Count);
        var dates = cells.ListBeside(BedColumns.AppliedDate, BedColumns.Applied, materials.Count);
        var workedIn = cells.ListBeside(BedColumns.WorkedIn, BedColumns.Applied, materials.Count);
        return Each(materials.Count, i => Members.Of(
            ("material", cells.Entry($"applied/{i}/material", BedColumns.Applied, materials[i])),
            ("amount", cells.Measure($"applied/{i}/amount", BedColumns.AppliedAmount, amounts[i])),
            ("date", cells.Entry($"applied/{i}/date", BedColumns.AppliedDate, dates[i])),
            ("incorporated", cells.Entry($"applied/{i}/incorporated", BedColumns.WorkedIn, workedIn[i]))));
    }

    private static JsonArray? Previous(Cells cells)
    {
        var crops = cells.List(BedColumns.PreviousCrop);
        var stands = crops.Select((crop, i) => Members.Of(("crop", cells.Entry($"previous/{i}/crop", BedColumns.PreviousCrop, crop)))).ToList();
        var cover = $"previous/{stands.Count}";
        if (cells.Text($"{cover}/coverCrop", BedColumns.PreviousCoverCrop) is { } coverCrop)
        {
            stands.Add(Members.Of(
                ("coverCrop", coverCrop),
                ("dryMatter", cells.Measure($"{cover}/dryMatter", BedColumns.CoverCropDryMatter)),
                ("nitrogenPercent", cells.Text($"{cover}/nitrogenPercent", BedColumns.CoverCropNitrogen)),
                ("stage", cells.Text($"{cover}/stage", BedColumns.CoverCropStage)),
                ("killed", cells.Text($"{cover}/killed", BedColumns.CoverCropKilled))));
        }

        return Each(stands.Count, i => stands[i]);
    }

    private static JsonObject? Structure(Cells cells)
    {
        var structure = Members.Of(
            ("material", cells.Text("structure/material", BedColumns.StructureMaterial)),
            ("rate", cells.Measure("structure/rate", BedColumns.StructureRate)),
            ("depth", cells.Measure("structure/depth", BedColumns.StructureDepth)));
        return structure.Count > 0 ? structure : null;
    }

    private static JsonObject? Gap(Cells cells)
    {
        var gap = Members.Of(("from", cells.Text("gap/from", BedColumns.GapFrom)), ("to", cells.Text("gap/to", BedColumns.GapTo)));
        return gap.Count > 0 ? gap : null;
    }

    private static JsonArray? Each(int count, Func<int, JsonObject> entry) =>
        count == 0 ? null : new JsonArray([.. Enumerable.Range(0, count).Select(entry)]);
}
