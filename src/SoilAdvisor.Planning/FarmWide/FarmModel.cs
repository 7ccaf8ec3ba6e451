namespace SoilAdvisor.Planning.FarmWide;

/// <summary>The choice of materials for all beds at once, as pure data.</summary>
/// <param name="Groups">Beds by need.</param>
/// <param name="Products">Everything that any of them may get, in the order offered.</param>
/// <param name="Limits">What the farm can buy and carry out.</param>
/// <param name="Priced">True when at least one material has a price.</param>
internal sealed record FarmModel(IReadOnlyList<NeedGroup> Groups, IReadOnlyList<FarmProduct> Products, FarmLimits Limits, bool Priced)
{
    /// <summary>
    /// Money that a pound of a needed nutrient counts as when limits of the farm keep it from a bed: far above any price, so that a need
    /// is given up only when nothing else is left. Ours, printed.
    /// </summary>
    public const double MissedBurden = 1000;

    /// <summary>True when packs, deliveries, passes or a number of products are counted.</summary>
    public bool CountsWholes => Limits.CountWholes || Products.Any(p => p.PackPounds is not null || p.Freight > 0);

    /// <summary>True when what one bed gets bears on what another gets.</summary>
    public bool TiesBedsTogether => CountsWholes || Limits.Budget is not null || Products.Any(p => (p.StockPounds > 0 && p.PricePerPound > 0) || !p.MayBeBought);

    /// <summary>Money that a pound of unwanted excess counts as.</summary>
    public double ExcessBurden => Priced ? (double)(Limits.ExcessPenalty?.Value ?? (decimal)MaterialChoice.MaterialModel.ExcessBurden) : 1;

    /// <summary>Money that a pound of material counts as, so that of two equal plans the lighter one is taken.</summary>
    public double MassBurden => Priced ? MaterialChoice.MaterialModel.MassBurden : 1e-3;
}
