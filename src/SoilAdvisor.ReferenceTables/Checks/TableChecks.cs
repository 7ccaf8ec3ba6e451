using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Reading;

namespace SoilAdvisor.ReferenceTables.Checks;

/// <summary>All checks.</summary>
internal static class TableChecks
{
    public static IReadOnlyList<ITableCheck> All { get; } =
    [
        new KindKnownCheck(),
        new DocumentIdCheck(),
        new IdShapeCheck(),
        new ColumnsOfKindCheck(),
        new KeysDeclaredCheck(),
        new KeyUniqueCheck(),
        new CellFilledCheck(),
        new CellTypeCheck(),
        new NumberRangeCheck(),
        new DeclaredWordsCheck(),
        new WordKnownCheck(),
        new UnitKnownCheck(),
        new PropertyUnitCheck(),
        new EvidenceKnownCheck(),
        new SurroundingBlankCheck(),
        new RangeOrderedCheck(),
        new ValuePresentCheck(),
        new RatedKnownCheck(),
        new IndexInputsCheck(),
        new ScaleConditionsCheck(),
        new ScaleUniformCheck(),
        new ScaleAscendingCheck(),
        new ScaleOpenEndsCheck(),
        new ScaleGapCheck(),
        new ScaleOverlapCheck(),
        new StandingOrderCheck(),
        new MethodFitsCheck(),
        new IdResolvesCheck("crop-known", RowKinds.Crops, "crop", RowKinds.Rates, RowKinds.Splits, RowKinds.CropValues, RowKinds.Aliases, RowKinds.Removals, RowKinds.TargetPhs, RowKinds.SidedressRates, RowKinds.Uptake),
        new IdResolvesCheck("material-known", RowKinds.Materials, "material", RowKinds.MaterialValues, RowKinds.MaterialCautions, RowKinds.TimeCourse, RowKinds.MaterialClasses),
        new IdResolvesCheck("caution-known", RowKinds.Cautions, "caution", RowKinds.MaterialCautions),
        new IdResolvesCheck("cover-crop-known", RowKinds.CoverCrops, "cover_crop", RowKinds.CoverCropValues),
        new IdResolvesCheck("metal-rule-known", RowKinds.MetalRules, "rule", RowKinds.MetalLimits),
        new MetalUnitCheck(),
        new AliasCanonicalCheck(),
        new NeverWithKnownCheck(),
        new GuideKnownCheck(),
        new PairClassesCheck(),
        new RateClassKnownCheck(),
        new NeedRisesCheck(),
        new RateTablePartsCheck(),
        new SidedressSpansCheck(),
        new SourceKnownCheck(),
        new SourceUsedCheck(),
        new SourceUniqueCheck(),
        new LinkBareCheck(),
        new DatesValidCheck(),
        new DatesOrderedCheck(),
        new CitationPresentCheck(),
        new RegionShapeCheck(),
        new MaterialPropertyCheck("material-largest-rate", "largest-single-rate", "largest single rate"),
        new MaterialPropertyCheck("material-wait", "wait-before-sowing", "wait before sowing"),
        new FormulaKnownCheck(),
        new LimePartsCheck(),
        new LimeCellsFitCheck(),
        new SpreadFitsCheck(),
        new SpreadOneRowCheck(),
        new CationPartsCheck(),
        new ConversionPartsCheck(),
        new OrganicReleaseCheck(),
        new AmmoniumKeptCheck(),
        new TimeCourseCheck(),
        new CarbonRatioCheck(),
        new SplitTimeCheck(),
    ];

    /// <summary>Every code that a problem can carry.</summary>
    public static IReadOnlyList<string> Codes { get; } = [.. FolderReader.Codes, .. All.Select(check => check.Code)];
}
