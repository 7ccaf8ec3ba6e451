using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Wording;

/// <summary>Members of closed sets in the grower's words.</summary>
internal static class TradeWords
{
    public static string Of(Analyte analyte) => analyte switch
    {
        Analyte.P => "Phosphorus (P)",
        Analyte.K => "Potassium (K)",
        Analyte.Ca => "Calcium (Ca)",
        Analyte.Mg => "Magnesium (Mg)",
        Analyte.S => "Sulfur (S)",
        Analyte.Na => "Sodium (Na)",
        Analyte.Cl => "Chloride (Cl)",
        Analyte.B => "Boron (B)",
        Analyte.Zn => "Zinc (Zn)",
        Analyte.Mn => "Manganese (Mn)",
        Analyte.Cu => "Copper (Cu)",
        Analyte.Fe => "Iron (Fe)",
        Analyte.Mo => "Molybdenum (Mo)",
        Analyte.Al => "Aluminium (Al)",
        Analyte.Pb => "Lead (Pb), extractable",
        Analyte.NitrateN => "Nitrate nitrogen (NO3-N)",
        Analyte.AmmoniumN => "Ammonium nitrogen (NH4-N)",
        Analyte.Ph => "pH",
        Analyte.BufferPh => "Buffer pH",
        Analyte.OrganicMatter => "Organic matter",
        Analyte.CationExchangeCapacity => "Cation exchange capacity",
        Analyte.ElectricalConductivity => "Soluble salts (conductivity)",
        Analyte.Acidity => "Acidity",
        Analyte.LimeBufferCapacity => "Lime buffer capacity",
        _ => throw new ArgumentOutOfRangeException(nameof(analyte)),
    };

    public static string Of(PlantNutrient nutrient) => nutrient switch
    {
        PlantNutrient.B => "boron (B)",
        PlantNutrient.Zn => "zinc (Zn)",
        PlantNutrient.Mn => "manganese (Mn)",
        PlantNutrient.Cu => "copper (Cu)",
        PlantNutrient.Fe => "iron (Fe)",
        PlantNutrient.Mo => "molybdenum (Mo)",
        _ => nutrient.Balanced() is { } balanced ? balanced.Words() : throw new ArgumentOutOfRangeException(nameof(nutrient)),
    };

    public static string Of(Standing standing) => standing switch
    {
        Standing.Below => "below where the guide wants it",
        Standing.Target => "where the guide wants it",
        Standing.Above => "above where the guide wants it",
        Standing.Stop => "so high that none should be added",
        Standing.Information => "for information, not a rating",
        _ => throw new ArgumentOutOfRangeException(nameof(standing)),
    };

    public static string Of(FindingState state) => state switch
    {
        FindingState.Pass => "Pass",
        FindingState.Act => "Act",
        FindingState.NotDecidable => "Not decidable: a record is missing",
        _ => throw new ArgumentOutOfRangeException(nameof(state)),
    };

    public static string Of(BedState state) => state switch
    {
        BedState.Planned => "planned whole",
        BedState.Partly => "planned in part",
        BedState.Refused => "not planned",
        _ => throw new ArgumentOutOfRangeException(nameof(state)),
    };

    public static string Of(SpreadBasis spread) => spread switch
    {
        SpreadBasis.BedTop => "bed top",
        SpreadBasis.BedAndPath => "bed and path",
        SpreadBasis.Band => "band beside the row",
        _ => throw new ArgumentOutOfRangeException(nameof(spread)),
    };

    public static string Of(Evidence evidence) => evidence switch
    {
        Evidence.Seen => "seen: read in a stored copy or a restatement of it",
        Evidence.FromMemory => "from memory: not read again, check it before you lean on it",
        Evidence.CommonPractice => "common practice: the trade agrees, no publication was read",
        Evidence.Ours => "ours: this report's own arithmetic or choice, open to dispute",
        _ => throw new ArgumentOutOfRangeException(nameof(evidence)),
    };

    // A pH has no unit to print beside it.
    public static string Of(ReportingUnit unit) => unit == ReportingUnit.PhUnits ? "" : Words.Units.IdOf(unit);

    public static string Sentence(string text) => text.Length == 0 || text[^1] is '.' or '!' or '?' or ':' || text.EndsWith(".)", StringComparison.Ordinal) ? text : text + ".";
}
