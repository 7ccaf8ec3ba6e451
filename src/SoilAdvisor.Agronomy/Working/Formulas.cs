using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Sampling;

namespace SoilAdvisor.Agronomy.Working;

/// <summary>Every formula of the science, by subject: what a teacher can vary one number of.</summary>
public static class Formulas
{
    /// <summary>All of them, in the order of the work.</summary>
    public static IReadOnlyList<IFormula> All { get; } =
    [
        SamplingFormulas.StandardScore,
        SamplingFormulas.CoresForPrecision,
        SamplingFormulas.CoresForPrecisionByStudent,
        SamplingFormulas.PrecisionOfCores,
        SamplingFormulas.DeviationOfResult,
        SamplingFormulas.DeviationOfDifference,
        SamplingFormulas.SmallestProvableChange,
        SamplingFormulas.SmallestProvableShare,
        CertaintyFormulas.OfDeviation,
        CertaintyFormulas.OfComposite,
        CertaintyFormulas.BelowLimit,
        CertaintyFormulas.BelowPhLimit,
        CertaintyFormulas.PooledValue,
        CertaintyFormulas.PooledSpread,
        CertaintyFormulas.PooledPh,
        CertaintyFormulas.PooledPhSpread,
        AreaFormulas.ConcentrationToMassPerArea,
        AreaFormulas.ConcentrationToMassPerHectare,
        AreaFormulas.VolumeToMass,
        AreaFormulas.ConductivityInMicrosiemens,
        MethodConversionFormulas.Extracted,
        MethodConversionFormulas.OfPh,
        OxideConversions.PhosphorusToPhosphate,
        OxideConversions.PotassiumToPotash,
        IndexFormulas.PhosphorusSaturationRatio,
        IndexFormulas.PhosphorusToAluminium,
        IndexFormulas.OxalatePhosphorusSaturation,
        IndexFormulas.ManganeseActivityNewJersey,
        IndexFormulas.ManganeseAvailabilitySensitiveCrops,
        IndexFormulas.ManganeseAvailabilityOtherCrops,
        IndexFormulas.ZincOntario,
        IndexFormulas.ManganeseOntario,
        OxideConversions.MagnesiumToMagnesia,
        OxideConversions.CalciumToOxide,
        OxideConversions.CalciumToCarbonate,
        OxideConversions.NitrateToNitrateNitrogen,
        OxideConversions.SulfateToSulfur,
        NeedFormulas.Removal,
        NeedFormulas.RemovalByBushel,
        NeedFormulas.SeasonRemoval,
        NeedFormulas.CriticalPotassium,
        NeedFormulas.BuildUpPhosphate,
        NeedFormulas.BuildUpPotash,
        NeedFormulas.RemovalAndBuildUp,
        CoverCropFormulas.QuadratDryMatter,
        CoverCropFormulas.PlantAvailableNitrogen,
        CoverCropFormulas.NitrogenCredit,
        CoverCropPhosphorus.InStand,
        NeedFormulas.NeedLessCredits,
        LimeFormulas.AcidityMehlich,
        LimeFormulas.MehlichNorthCarolina,
        LimeFormulas.ModifiedMehlichPennsylvania,
        LimeFormulas.ModifiedMehlichPennsylvaniaTo70,
        LimeFormulas.AcidityAdamsEvans,
        LimeFormulas.AcidSaturationAdamsEvans,
        LimeFormulas.AdamsEvans,
        CationFormulas.ChargeByMass,
        CationFormulas.ChargeByAcre,
        CationFormulas.ChargeByVolume,
        CationFormulas.ContentOfCharge,
        CationFormulas.AcidityMooreSikora,
        CationFormulas.AciditySmp,
        CationFormulas.SumOfBases,
        CationFormulas.SumOfBasesByVolume,
        CationFormulas.Capacity,
        CationFormulas.CapacityByVolume,
        CationFormulas.SaturationOf,
        CationFormulas.SaturationByVolume,
        CationFormulas.CalciumToMagnesium,
        CationFormulas.CalciumToMagnesiumByVolume,
        CationFormulas.EffectiveCapacity,
        LimeFormulas.BetweenCells,
        LimeFormulas.ForDepth,
        LimeFormulas.AsStone,
        MaterialFormulas.PlantAvailableNitrogenSplit,
        MaterialFormulas.PlantAvailableNitrogenOfTotal,
        MaterialFormulas.DryToAsIs,
        MaterialAnalyses.AvailableOfTotal,
        AreaFormulas.PercentToPoundsPerTon,
        MaterialFormulas.MaterialForNutrient,
        MaterialFormulas.NutrientFromMaterial,
        MaterialFormulas.BoronProduct,
        CompostFormulas.MoistureOfMix,
        CompostFormulas.CarbonToNitrogenOfMix,
        AreaFormulas.PerAcreToPer1000SquareFeet,
        AreaFormulas.RatePerBed,
        BedFormulas.BedTopArea,
        BedFormulas.BedAndPathArea,
        BedFormulas.OnBroadcastAcre,
    ];
}
