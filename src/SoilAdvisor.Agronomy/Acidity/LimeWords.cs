using SoilAdvisor.Agronomy.SoilTests;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>The written words of lime methods.</summary>
public static class LimeWords
{
    /// <summary>What a method reads.</summary>
    public static Vocabulary<LimeReads> Reads { get; } = new("lime reading",
        [(LimeReads.BufferPh, "buffer-ph", []), (LimeReads.Acidity, "acidity", []), (LimeReads.LimeBufferCapacity, "lime-buffer-capacity", []), (LimeReads.SoilPh, "soil-ph", [])]);

    /// <summary>Soils that a method is made for.</summary>
    public static Vocabulary<LimeSoil> Soils { get; } = new("lime soil", [(LimeSoil.Any, "any", []), (LimeSoil.Mineral, "mineral", []), (LimeSoil.Organic, "organic", [])]);

    /// <summary>What rows of a table stand for.</summary>
    public static Vocabulary<LimeRows> Rows { get; } = new("lime rows", [(LimeRows.Points, "points", []), (LimeRows.UpperLimits, "upper-limits", [])]);

    /// <summary>How a method is published.</summary>
    public static Vocabulary<LimeMethodKind> Kinds { get; } = new("lime method kind",
    [
        (LimeMethodKind.Equation, "equation", []), (LimeMethodKind.TargetEquations, "target-equations", []), (LimeMethodKind.Table, "table", []),
        (LimeMethodKind.LaboratoryOnly, "laboratory-only", []),
    ]);
}
