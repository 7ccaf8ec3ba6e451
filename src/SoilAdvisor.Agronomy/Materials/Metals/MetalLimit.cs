using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials.Metals;

/// <summary>One limit on one metal.</summary>
/// <param name="Metal">The metal.</param>
/// <param name="Kind">What it bounds.</param>
/// <param name="Value">The number as printed; above zero.</param>
/// <param name="Unit">mg/kg, kg/ha, lb/acre, or mg/kg for each percent.</param>
/// <param name="Years">Years that a cumulative limit is spread over; null where it is for ever.</param>
/// <param name="LeastPercent">Least percent of P2O5 to multiply by, where a rule prints one; null for none.</param>
/// <param name="Source">Where it stands.</param>
public sealed record MetalLimit(Metal Metal, MetalLimitKind Kind, decimal Value, string Unit, int? Years, decimal? LeastPercent, Citation Source)
{
    /// <summary>A limit by mass on an area. Throws for a limit by content.</summary>
    public MassPerArea Load => Unit switch
    {
        "kg/ha" => MassPerArea.FromKilogramsPerHectare((double)Value),
        "lb/acre" => MassPerArea.FromPoundsPerAcre((double)Value),
        _ => throw new InvalidOperationException($"A limit in {Unit} is no load."),
    };
}
