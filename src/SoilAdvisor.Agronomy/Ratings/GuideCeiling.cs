using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>A limit set by law or regulation. It is no class: it says nothing of what a crop needs, and a rating never looks at it.</summary>
/// <param name="Analyte">What is limited, or what the index speaks of.</param>
/// <param name="Index">Id of the guide's index that is limited; null where the reading itself is.</param>
/// <param name="Method">The method of the reading; without meaning for an index.</param>
/// <param name="Unit">Unit of the limit.</param>
/// <param name="Limit">The limit.</param>
/// <param name="LimitIncluded">True when the limit itself already counts as reached.</param>
/// <param name="Jurisdiction">Whose law, in words.</param>
/// <param name="WhatItAsks">What it asks of the grower, in plain words.</param>
/// <param name="Condition">Where or for whom it holds, in words; null for all.</param>
/// <param name="Source">Where it stands.</param>
public sealed record GuideCeiling(
    Analyte Analyte,
    string? Index,
    ScaleMethod Method,
    ReportingUnit Unit,
    decimal Limit,
    bool LimitIncluded,
    string Jurisdiction,
    string WhatItAsks,
    string? Condition,
    Citation Source);
