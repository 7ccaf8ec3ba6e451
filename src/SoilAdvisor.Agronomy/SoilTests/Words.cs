namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>The written words of soil testing. One place for ids and the synonyms that laboratories print.</summary>
public static class Words
{
    /// <summary>Analytes.</summary>
    public static Vocabulary<Analyte> Analytes { get; } = new("analyte",
    [
        (Analyte.P, "P", []), (Analyte.K, "K", []), (Analyte.Ca, "Ca", []), (Analyte.Mg, "Mg", []), (Analyte.S, "S", []),
        (Analyte.Na, "Na", []), (Analyte.Cl, "Cl", []), (Analyte.B, "B", []), (Analyte.Zn, "Zn", []), (Analyte.Mn, "Mn", []),
        (Analyte.Cu, "Cu", []), (Analyte.Fe, "Fe", []), (Analyte.Mo, "Mo", []), (Analyte.Al, "Al", []), (Analyte.Pb, "Pb", []),
        (Analyte.NitrateN, "NO3-N", []), (Analyte.AmmoniumN, "NH4-N", []), (Analyte.Ph, "pH", []), (Analyte.BufferPh, "bufferPh", ["buffer pH"]),
        (Analyte.OrganicMatter, "organicMatter", ["organic matter", "OM"]), (Analyte.CationExchangeCapacity, "cec", []),
        (Analyte.ElectricalConductivity, "ec", []), (Analyte.Acidity, "acidity", []), (Analyte.LimeBufferCapacity, "limeBufferCapacity", ["lime buffer capacity", "LBC"]),
    ]);

    /// <summary>Extractants.</summary>
    public static Vocabulary<Extractant> Extractants { get; } = new("extractant",
    [
        (Extractant.Mehlich3, "mehlich-3", ["mehlich 3", "mehlich3", "mehlich iii", "m3"]), (Extractant.Mehlich1, "mehlich-1", ["mehlich 1", "mehlich1", "mehlich i", "m1"]),
        (Extractant.ModifiedMorgan, "modified-morgan", ["modified morgan"]), (Extractant.Morgan, "morgan", []),
        (Extractant.BrayP1, "bray-p1", ["bray p1", "bray 1", "bray-1"]), (Extractant.Olsen, "olsen", []),
        (Extractant.AmmoniumAcetate, "ammonium-acetate", ["ammonium acetate"]),
        (Extractant.AmmoniumNitrate, "ammonium-nitrate", ["ammonium nitrate"]), (Extractant.PhosphoricAcid, "phosphoric-acid", ["phosphoric acid"]), (Extractant.Dtpa, "dtpa", []),
        (Extractant.HotWater, "hot-water", ["hot water"]), (Extractant.Water, "water", []),
    ]);

    /// <summary>Detections.</summary>
    public static Vocabulary<Detection> Detections { get; } = new("detection",
        [(Detection.Icp, "icp", []), (Detection.Colorimetric, "colorimetric", ["colorimetry"])]);

    /// <summary>Bases.</summary>
    public static Vocabulary<Basis> Bases { get; } = new("basis", [(Basis.Element, "element", []), (Basis.Oxide, "oxide", [])]);

    /// <summary>Units.</summary>
    public static Vocabulary<ReportingUnit> Units { get; } = new("unit",
    [
        (ReportingUnit.MilligramsPerKilogram, "mg/kg", ["ppm"]), (ReportingUnit.MilligramsPerCubicDecimetre, "mg/dm3", ["mg/L", "mg/dm³"]),
        (ReportingUnit.PoundsPerAcre, "lb/acre", ["lb/ac", "lbs/acre", "lbs/ac"]), (ReportingUnit.KilogramsPerHectare, "kg/ha", []),
        (ReportingUnit.MilliequivalentsPer100Grams, "meq/100g", ["cmolc/kg", "meq/100 g"]),
        (ReportingUnit.MilliequivalentsPer100CubicCentimetres, "meq/100cm3", ["meq/100 cm3", "meq/100cc", "meq/100 cc"]), (ReportingUnit.Percent, "%", ["percent"]),
        (ReportingUnit.DecisiemensPerMetre, "dS/m", ["mmho/cm", "mS/cm"]), (ReportingUnit.PhUnits, "pH", []), (ReportingUnit.Index, "index", []),
        (ReportingUnit.MilligramsPerKilogramAndPh, "mg/kg/pH", ["ppm CaCO3/pH", "mg CaCO3/kg/pH"]),
    ]);

    /// <summary>Soil groups.</summary>
    public static Vocabulary<SoilGroup> SoilGroups { get; } = new("texture",
    [
        (SoilGroup.Sand, "sand", []), (SoilGroup.LoamySand, "loamy-sand", ["loamy sand"]), (SoilGroup.SandyLoam, "sandy-loam", ["sandy loam"]),
        (SoilGroup.Loam, "loam", []), (SoilGroup.SiltLoam, "silt-loam", ["silt loam"]), (SoilGroup.ClayLoam, "clay-loam", ["clay loam"]),
        (SoilGroup.Clay, "clay", []), (SoilGroup.Organic, "organic", ["muck", "peat"]),
    ]);

    /// <summary>Timings of a sample.</summary>
    public static Vocabulary<SampleTiming> Timings { get; } = new("timing", [(SampleTiming.BeforeSidedressing, "before-sidedressing", ["before sidedressing", "pre-sidedress"])]);

    /// <summary>Procedures of one analyte; empty for an analyte that takes an extractant instead.</summary>
    /// <param name="analyte">The analyte.</param>
    public static Vocabulary<Procedure>? ProceduresOf(Analyte analyte) => analyte switch
    {
        Analyte.Ph => PhProcedures,
        Analyte.BufferPh => BufferProcedures,
        Analyte.LimeBufferCapacity => CapacityProcedures,
        Analyte.ElectricalConductivity => SaltProcedures,
        Analyte.OrganicMatter => OrganicMatterProcedures,
        Analyte.CationExchangeCapacity => ExchangeProcedures,
        _ => null,
    };

    private static Vocabulary<Procedure> PhProcedures { get; } = new("pH method",
    [
        (Procedure.PhWater11, "water-1:1", ["1:1 water", "water 1:1"]), (Procedure.PhWater12, "water-1:2", ["1:2 water", "water 1:2"]),
        (Procedure.PhWater125, "water-1:2.5", ["1:2.5 water", "water 1:2.5"]), (Procedure.PhWater15, "water-1:5", ["1:5 water", "water 1:5"]),
        (Procedure.PhCalciumChloride, "cacl2-0.01m", ["cacl2"]), (Procedure.PhPotassiumChloride, "kcl-1m", ["kcl"]),
    ]);

    private static Vocabulary<Procedure> BufferProcedures { get; } = new("buffer",
    [
        (Procedure.BufferMehlich, "mehlich", []), (Procedure.BufferModifiedMehlich, "modified-mehlich", ["modified mehlich"]),
        (Procedure.BufferSmp, "smp", []), (Procedure.BufferSikora, "sikora", []), (Procedure.BufferAdamsEvans, "adams-evans", ["adams evans"]),
        (Procedure.BufferMooreSikora, "moore-sikora", ["moore sikora"]), (Procedure.BufferWoodruff, "woodruff", []),
    ]);

    private static Vocabulary<Procedure> CapacityProcedures { get; } = new("lime buffer capacity method",
        [(Procedure.CapacityThirtyMinutes, "30-minutes", ["30 minutes", "30 min"]), (Procedure.CapacityEquilibrium, "equilibrium", [])]);

    private static Vocabulary<Procedure> SaltProcedures { get; } = new("extract",
        [(Procedure.SaltsSaturatedPaste, "saturated-paste", ["saturated paste"]), (Procedure.Salts11, "1:1", []), (Procedure.Salts12, "1:2", [])]);

    private static Vocabulary<Procedure> OrganicMatterProcedures { get; } = new("organic matter method",
        [(Procedure.LossOnIgnition, "loss-on-ignition", ["loss on ignition", "loi"]), (Procedure.WalkleyBlack, "walkley-black", ["walkley black"])]);

    private static Vocabulary<Procedure> ExchangeProcedures { get; } = new("exchange capacity method",
        [(Procedure.Summation, "summation", ["sum"]), (Procedure.Displacement, "displacement", [])]);
}
