using System.Globalization;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Planning.Beds;

/// <summary>The one sentence that stands first.</summary>
internal static class BedSummary
{
    public static string Of(Bed bed, BedState state, BedLime lime, IReadOnlyList<MaterialApplication> applications, IReadOnlyList<Shortfall> shortfalls, Refusal? first)
    {
        if (state == BedState.Refused)
        {
            return $"No plan for bed {bed.Id}: {first?.Message ?? "nothing could be computed."}";
        }

        var acts = applications.Select(a => $"{Weight(a.PerBed)} of {a.Offered.Material.Name} for {bed.Plantings[a.PlantingIndex].Crop.Name}").ToList();
        if (lime.Plan?.Chosen is { } chosen)
        {
            acts.Insert(0, $"{Weight(chosen.PerBed ?? chosen.Rate.On(bed.Area))} of {chosen.Offered.Material.Name} as lime");
        }

        var open = state == BedState.Partly ? " Some of it could not be planned; see what is missing." : "";
        var missed = shortfalls.Count > 0 ? " Not every need is met; see the shortfalls." : "";
        return acts.Count > 0
            ? $"Spread {string.Join(", ", acts)} on bed {bed.Id}.{missed}{open}"
            : $"Nothing to spread on bed {bed.Id}: {Why(lime, shortfalls)}.{missed}{open}";
    }

    private static string Why(BedLime lime, IReadOnlyList<Shortfall> shortfalls) => (shortfalls.Count, lime.Plan) switch
    {
        ( > 0, _) => "nothing on the list can meet what is needed",
        (_, null) => "what was planned asks for no nutrient, and the lime requirement is not known",
        _ => "the soil and the credits cover every need that was planned, and no lime is needed",
    };

    private static string Weight(Mass mass) => $"{Weights.PoundsAndOunces(mass)} ({Digits(mass.Kilograms)} kg)";

    private static string Digits(double value) => value.ToString(value >= 100 ? "0" : value >= 10 ? "0.0" : "0.00", CultureInfo.InvariantCulture);
}
