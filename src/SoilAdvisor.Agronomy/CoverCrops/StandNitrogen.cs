using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.CoverCrops;

/// <summary>Nitrogen of a stand from its dry matter and its %N. For a mixture the %N is that of the whole, blended by dry matter.</summary>
/// <param name="Total">Nitrogen in the dry matter above ground.</param>
/// <param name="Available">What the next crop can use in its first season; below zero when the stand ties nitrogen up.</param>
/// <param name="CarbonToNitrogen">Carbon to nitrogen by weight, with 40 % carbon.</param>
/// <param name="Release">What that ratio means: releases, neutral or ties-up.</param>
public sealed record StandNitrogen(MassPerArea Total, MassPerArea Available, Coefficient CarbonToNitrogen, string Release);
