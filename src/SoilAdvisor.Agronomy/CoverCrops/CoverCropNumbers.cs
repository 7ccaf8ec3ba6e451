namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>What a cover crop does in a gap, in numbers, if it is grown and killed then. It changes no need of the same plan.</summary>
/// <param name="DryMatter">Dry matter above ground; null where none is held.</param>
/// <param name="NitrogenFixed">Nitrogen that a legume takes from the air; null for others and where none is held.</param>
/// <param name="Stages">Available nitrogen by the stage at which it is killed; empty where no dry matter is held.</param>
/// <param name="Phosphate">P2O5 taken up and given back: moved, not added; null where none is held.</param>
/// <param name="Potash">K2O taken up and given back: moved, not added; null where none is held.</param>
/// <param name="PhosphorusEvidence">How strong the evidence on its phosphorus is, in words; null where no trial is held.</param>
/// <param name="Trials">The trials behind that sentence.</param>
public sealed record CoverCropNumbers(
    CoverCropRange? DryMatter,
    CoverCropRange? NitrogenFixed,
    IReadOnlyList<StageNitrogen> Stages,
    CoverCropRange? Phosphate,
    CoverCropRange? Potash,
    string? PhosphorusEvidence,
    IReadOnlyList<CoverCropTrial> Trials);
