using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Beds;

/// <summary>The columns of a bed list, as docs/bed-list.md describes them.</summary>
internal static class BedColumns
{
    public static readonly Column Bed = new("bed", Required: true);
    public static readonly Column Length = new("length", "ft");
    public static readonly Column Width = new("width", "in");
    public static readonly Column Area = new("area", "sq ft");
    public static readonly Column CentreSpacing = new("centre spacing", "in");
    public static readonly Column Spread = new("spread");
    public static readonly Column SoilTest = new("soil test", Required: true);
    public static readonly Column Site = new("site");
    public static readonly Column Crops = new("crops", Required: true);
    public static readonly Column PlantingDates = new("planting dates");
    public static readonly Column FirstHarvests = new("first harvests");
    public static readonly Column LastHarvests = new("last harvests");
    public static readonly Column ExpectedYields = new("expected yields", "short-ton/acre");
    public static readonly Column Placements = new("placements");
    public static readonly Column GapFrom = new("gap from");
    public static readonly Column GapTo = new("gap to");
    public static readonly Column PreviousCrop = new("previous crop");
    public static readonly Column PreviousCoverCrop = new("previous cover crop");
    public static readonly Column CoverCropKilled = new("cover crop killed");
    public static readonly Column CoverCropStage = new("cover crop stage");
    public static readonly Column CoverCropDryMatter = new("cover crop dry matter", "lb/acre");
    public static readonly Column CoverCropNitrogen = new("cover crop nitrogen", "%");
    public static readonly Column Applied = new("applied");
    public static readonly Column AppliedAmount = new("applied amount", "lb");
    public static readonly Column AppliedDate = new("applied date");
    public static readonly Column WorkedIn = new("worked in");
    public static readonly Column StructureMaterial = new("structure material");
    public static readonly Column StructureRate = new("structure rate", "ton/acre");
    public static readonly Column StructureDepth = new("structure depth", "in");
    public static readonly Column WaterWithin = new("water within", "ft");

    /// <summary>All of them, in the order of the document.</summary>
    public static readonly IReadOnlyList<Column> All =
    [
        Bed, Length, Width, Area, CentreSpacing, Spread, SoilTest, Site, Crops, PlantingDates, FirstHarvests, LastHarvests, ExpectedYields, Placements,
        GapFrom, GapTo, PreviousCrop, PreviousCoverCrop, CoverCropKilled, CoverCropStage, CoverCropDryMatter, CoverCropNitrogen,
        Applied, AppliedAmount, AppliedDate, WorkedIn, StructureMaterial, StructureRate, StructureDepth, WaterWithin,
    ];
}
