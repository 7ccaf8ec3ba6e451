using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Acidity.Stones;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>
/// Stones that meet a lime requirement, best first. Magnesium decides between dolomitic and calcitic by a named cut-off, never by a
/// calcium to magnesium ratio; then the price of what the requirement counts; then the smaller rate.
/// </summary>
public static class LimeChoices
{
    // Dolomitic products carry 6 to 12 % Mg (ncda-410); a stone below that is not sold as dolomitic.
    private const double LeastMagnesiumOfDolomitic = 0.06;

    private const string Lime = "lime";

    /// <summary>Stones that meet the requirement, and those offered that do not; nothing when no lime is needed.</summary>
    /// <param name="requirement">The requirement, for the depth that is worked.</param>
    /// <param name="offered">Materials at hand. Ash is taken only when the user listed it.</param>
    /// <param name="ground">The ground that is limed.</param>
    /// <param name="working">Receives the line of each stone's rate; its last line so far must be the requirement. Null for none.</param>
    public static LimeSelection For(LimeRequirement requirement, IReadOnlyList<OfferedMaterial> offered, LimeGround ground, WorkingSheet? working = null)
    {
        if (requirement.Lime.IsZero)
        {
            return new LimeSelection([], []);
        }

        var line = working?.LastLine ?? 0;
        var stones = offered.Where(o => o.Material.Category == Lime && o.Material.Status != OrganicStatus.Prohibited && NeutralisingValue(o) > 0 && o.TightestCap?.Most.IsZero != true && (o.Listed || !WoodAsh.Is(o))).ToList();
        var ruledOut = WoodAsh.RuledOut(requirement, ground);
        return new LimeSelection(
            [
                .. stones
                    .Where(o => ruledOut is null || !WoodAsh.Is(o))
                    .Select(o => Choose(requirement, o, ground, line, working))
                    .OrderBy(c => WoodAsh.Is(c.Offered))
                    .ThenBy(c => !FitsMagnesium(c.Offered, ground.Magnesium))
                    .ThenBy(c => c.CostPerTon is null)
                    .ThenBy(c => c.CostPerTon?.Value ?? 0)
                    .ThenBy(c => c.Rate)
                    .ThenBy(c => c.Offered.Material.Id, StringComparer.Ordinal),
            ],
            ruledOut is var (reason, source) ? [.. stones.Where(WoodAsh.Is).Select(o => new LimeExclusion(o.Material, reason, source))] : []);
    }

    /// <summary>
    /// Materials that are taken for lime and are none, or may not be used: gypsum, and burnt and hydrated lime, which organic rules forbid.
    /// </summary>
    /// <param name="materials">Materials of the tables or of the list.</param>
    public static IReadOnlyList<LimeExclusion> NeverLime(IEnumerable<Material> materials) =>
    [
        .. materials
            .Select(m => (Material: m, Value: m.ValueOf("neutralising-value")))
            .Where(x => x.Material.Category != Lime && x.Value is { } value && (x.Material.Status == OrganicStatus.Prohibited || value.Value == 0))
            .Select(x => x.Material.Status == OrganicStatus.Prohibited
                ? new LimeExclusion(x.Material, $"Prohibited on organic ground ({x.Material.Rule}): never in a plan, whatever its neutralising value ({PlainNumber.Of((x.Value!.Value ?? x.Value.Low)!.Value)} % CaCO3 or more).", x.Material.Source)
                : new LimeExclusion(x.Material, "No lime: it moves the pH neither way. It changes nutrients only.", x.Value!.Source)),
    ];

    private static LimeChoice Choose(LimeRequirement requirement, OfferedMaterial offered, LimeGround ground, int requirementLine, WorkingSheet? working)
    {
        var how = StoneRates.For(requirement, offered, ground.Tables, requirementLine, working);
        var (rate, covers, limited) = (how.Rate, 1.0, (string?)null);
        if (WoodAsh.Is(offered) && WoodAsh.Limit(offered, ground) is var (most, said) && most < rate)
        {
            (rate, covers, limited) = (most, most.PoundsPerAcre / rate.PoundsPerAcre, said);
        }

        var doses = LimeDosing.For(rate, offered, ground, ground.Tables.DoseLimits);
        var perBed = ground.Area is { } area ? rate.On(area) : (Mass?)null;
        var counted = requirement.Lime.AsPureLime * covers;
        return new LimeChoice(
            offered,
            how,
            rate,
            covers,
            perBed,
            doses,
            perBed is { } mass ? VolumeMeasures.For(offered.Material, mass) : null,
            perBed is { } weighed && offered.PricePerKilogram is { } price ? new Money(price.Value * (decimal)weighed.Kilograms, price.Currency) : null,
            offered.PricePerKilogram is { } paid ? new Money(paid.Value * (decimal)(rate.PoundsPerAcre / counted.PoundsPerAcre * Mass.FromShortTons(1).Kilograms), paid.Currency) : null,
            [.. Reasons(offered, how, doses, covers, limited, ground.Magnesium)],
            offered.Analysis.Supplies(rate).With(Nutrient.CalciumCarbonate, counted));
    }

    private static IEnumerable<string> Reasons(OfferedMaterial offered, StoneRate how, LimeDoses doses, double covers, string? limited, MagnesiumTest magnesium)
    {
        yield return how.Said;
        if (WoodAsh.Is(offered))
        {
            yield return "Ash varies widely and brings potash: have it tested.";
            if (limited is not null)
            {
                yield return $"{limited} It meets {PlainNumber.Of(covers * 100)} % of the requirement; meet the rest with limestone.";
            }
        }

        yield return magnesium.WantsMagnesium switch
        {
            null => $"{magnesium.Said}.",
            true when IsDolomitic(offered) => $"{magnesium.Said}: dolomitic stone adds it.",
            true => $"{magnesium.Said} and this stone adds little: give magnesium another way.",
            false when IsDolomitic(offered) => $"{magnesium.Said}: calcitic stone is the better choice; dolomitic adds more magnesium.",
            false => $"{magnesium.Said}: this stone adds little of it.",
        };

        yield return doses.Said;
    }

    private static bool FitsMagnesium(OfferedMaterial offered, MagnesiumTest magnesium) => magnesium.WantsMagnesium is not { } wants || wants == IsDolomitic(offered);

    private static double NeutralisingValue(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.CalciumCarbonate);

    private static bool IsDolomitic(OfferedMaterial offered) => offered.Analysis.Share(Nutrient.Mg) >= LeastMagnesiumOfDolomitic;
}
