using SoilAdvisor.Agronomy.Materials;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>A material as the whole farm buys it, in pounds and in the money of the plan.</summary>
/// <param name="Offered">The material.</param>
/// <param name="PricePerPound">Price; 0 for one without a price.</param>
/// <param name="PackPounds">Size of the pack that is sold whole; null for any amount.</param>
/// <param name="Freight">Cost of delivery, paid once when any is bought; 0 for none.</param>
/// <param name="StockPounds">On the shelf.</param>
/// <param name="TakenPounds">Already planned as lime or as compost for structure.</param>
internal sealed record FarmProduct(OfferedMaterial Offered, double PricePerPound, double? PackPounds, double Freight, double StockPounds, double TakenPounds)
{
    /// <summary>False for what the farm makes itself and says how much it has: there is no more of it.</summary>
    public bool MayBeBought { get; } = Offered is not { Origin: MaterialOrigin.Own, OnHand: not null };

    /// <summary>What the shelf still holds of it, pounds; below zero when lime takes more, which is then bought.</summary>
    public double LeftPounds => MayBeBought ? StockPounds - TakenPounds : Math.Max(0, StockPounds - TakenPounds);

    public static FarmProduct Of(OfferedMaterial offered, double takenPounds) => new(
        offered,
        MaterialChoice.MaterialModel.PricePerPound(offered),
        offered.Pack?.Pounds,
        (double)(offered.Freight?.Value ?? 0),
        offered.OnHand?.Pounds ?? 0,
        takenPounds);
}
