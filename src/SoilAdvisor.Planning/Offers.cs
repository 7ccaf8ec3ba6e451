using System.Runtime.CompilerServices;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning;

/// <summary>
/// What may be spread on this farm: the list that was given or, without one, what the tables hold and a farm may buy. Prohibited materials
/// never enter; micronutrients have their own guard and never enter either.
/// </summary>
internal sealed class Offers
{
    // The only figure of a material that depends on the bed: rock phosphate counts only below a soil pH.
    private const string UsableBelowPh = "usable-below-ph";
    private const string ElementalSulfur = "sulfur-elemental";

    // A price per pound of rock phosphate means something only on soil acid enough for it.
    private const decimal PhWhereRockCounts = 5;

    // The tables never change once they are read: what they offer is worked out once.
    private static readonly ConditionalWeakTable<Tables, List<(MaterialOffer Offer, OfferedMaterial? Ready)>> OfTables = [];

    private readonly List<(MaterialOffer Offer, OfferedMaterial? Ready)> offers = [];
    private readonly Lazy<IReadOnlyList<(MaterialOffer Offer, OfferedMaterial? Ready)>> table;

    private Offers(FarmRequest request, Tables tables)
    {
        Listed = request.Materials.Count > 0;
        foreach (var offer in request.Materials)
        {
            if (offer.Material.Category == "micronutrient")
            {
                NotUsed.Add($"{offer.Material.Name} is not planned as a material: micronutrients are only for a deficiency that a soil test shows. See the findings of each bed.");
            }
            else if (!IsProhibited(offer.Material))
            {
                AddTested(WithFactors(offer, request, tables), request.MetalRule, tables);
            }
        }

        table = new(() =>
        {
            var listed = request.Materials.Select(m => m.Material.Id).ToHashSet(StringComparer.Ordinal);
            return [.. OfTables.GetValue(tables, Buyable).Where(o => !listed.Contains(o.Offer.Material.Id))];
        });
        var stones = Ready(offers).Where(o => o.Material.Category == "lime").ToList();
        HoldsLime = !Listed || stones.Count > 0;
        Limes = stones.Count > 0 ? stones : [.. Ready(table.Value).Where(o => o.Material.Category == "lime")];
        Priced = Ready(offers).Any(o => o.PricePerKilogram is not null);
    }

    /// <summary>True when the farm gave a list.</summary>
    public bool Listed { get; }

    /// <summary>True when at least one material has a price.</summary>
    public bool Priced { get; }

    /// <summary>True when lime may be chosen: it is on the list, or there is no list.</summary>
    public bool HoldsLime { get; }

    /// <summary>Liming materials: those listed or, where none is, those of the tables.</summary>
    public IReadOnlyList<OfferedMaterial> Limes { get; }

    /// <summary>Listed materials that are not used, each with the reason in words.</summary>
    public List<string> NotUsed { get; } = [];

    /// <summary>What tests of the listed materials say beside their nutrients.</summary>
    public List<MaterialTestFinding> Tests { get; } = [];

    /// <summary>Every listed material; a phosphate rock as on soil where it counts.</summary>
    public IEnumerable<OfferedMaterial> Priceable => Listed ? At(offers, PhWhereRockCounts, listed: true) : [];

    public static Offers Of(FarmRequest request, Tables tables) => new(request, tables);

    /// <summary>Materials to choose from on a bed.</summary>
    /// <param name="phAfterLiming">Soil pH after liming; null when not known.</param>
    public IReadOnlyList<OfferedMaterial> For(decimal? phAfterLiming) => Listed ? At(offers, phAfterLiming, listed: true) : At(table.Value, phAfterLiming, listed: false);

    /// <summary>Materials of the tables that were not offered.</summary>
    /// <param name="phAfterLiming">Soil pH after liming; null when not known.</param>
    public IReadOnlyList<OfferedMaterial> NotOffered(decimal? phAfterLiming) => Listed ? At(table.Value, phAfterLiming, listed: false) : [];

    private void AddTested(MaterialOffer offer, MetalRule? rule, Tables tables)
    {
        var metals = MetalCheck.Of(offer.Material, offer.Tested, rule);
        Tests.AddRange([.. metals.Findings, .. SaltCheck.Of(offer.Material, offer.Tested, tables.SaltLimits)]);
        if (metals.Forbids)
        {
            NotUsed.Add($"{offer.Material.Name} is not used: {string.Join(" ", metals.Findings.Where(f => f.Forbids).Select(f => $"{f.Subject} {f.Found}. {f.Text}"))}");
            return;
        }

        Add(offers, offer with { TestCaps = metals.Caps }, Listed, NotUsed);
    }

    private static List<(MaterialOffer Offer, OfferedMaterial? Ready)> Buyable(Tables tables)
    {
        var buyable = new List<(MaterialOffer, OfferedMaterial?)>();
        foreach (var material in tables.Materials.Values.Where(MayBeBought))
        {
            Add(buyable, new MaterialOffer(material, null, null, null), listed: false, []);
        }

        return buyable;
    }

    // What a grower must choose knowingly is used only when listed: raw manure, what 205.602 allows under a condition only (sodium
    // nitrate, potassium chloride), and elemental sulfur, which acidifies.
    private static bool MayBeBought(Material material) =>
        !IsProhibited(material)
        && material.Manure != ManureKind.Raw
        && material.Id != ElementalSulfur
        && !material.Rule.Contains("205.602", StringComparison.Ordinal)
        && material.Category is not ("micronutrient" or "liquid" or "mulch" or "conditioner");

    // The farm's findings say so to the grower.
    private static bool IsProhibited(Material material) => material.Status == OrganicStatus.Prohibited || material.Category == "prohibited";

    private static void Add(List<(MaterialOffer, OfferedMaterial?)> to, MaterialOffer offer, bool listed, List<string> refused)
    {
        var limit = offer.Material.ValueOf(UsableBelowPh);
        if (Make(offer, limit?.Value, listed).TryGet(out var ready, out var reason))
        {
            to.Add((offer, limit is null ? ready : null));
        }
        else
        {
            refused.Add($"{offer.Material.Name} is not used. {reason.Message} {reason.Suggestion}");
        }
    }

    // What is still to be spread is taken to be worked in within a day, which the analysis says.
    private static MaterialOffer WithFactors(MaterialOffer offer, FarmRequest request, Tables tables) =>
        offer with { Tested = TestedForms.WithFactors(offer.Tested, offer.Material, tables.Nitrogen, request.Region, SpreadingWay.Incorporated, 1) };

    private static Answer<OfferedMaterial> Make(MaterialOffer offer, decimal? ph, bool listed) =>
        MaterialAnalyses.For(offer.Material, ph, offer.Tested).Then(analysis =>
            OfferedMaterials.For(offer.Material, analysis, offer.PricePerKilogram, UnitsNet.Mass.FromKilograms(1), offer.OnHand, listed))
            .Select(made => made with { Pack = offer.Pack, Freight = offer.Freight, Origin = offer.Origin, Caps = [.. made.Caps, .. offer.TestCaps, .. offer.Most is { } most ? new[] { most } : []] });

    /// <summary>Writes down how the figures of a material came about.</summary>
    /// <param name="offered">The material.</param>
    /// <param name="phAfterLiming">Soil pH after liming; null when not known.</param>
    /// <param name="working">Receives the lines.</param>
    public void WriteAnalysis(OfferedMaterial offered, decimal? phAfterLiming, WorkingSheet working)
    {
        var tested = offers.Find(o => o.Offer.Material.Id == offered.Material.Id).Offer?.Tested;
        MaterialAnalyses.For(offered.Material, phAfterLiming, tested, working);
    }

    private static IEnumerable<OfferedMaterial> Ready(IEnumerable<(MaterialOffer Offer, OfferedMaterial? Ready)> from) => from.Select(o => o.Ready).OfType<OfferedMaterial>();

    private static List<OfferedMaterial> At(IReadOnlyList<(MaterialOffer Offer, OfferedMaterial? Ready)> from, decimal? ph, bool listed)
    {
        var at = new List<OfferedMaterial>(from.Count);
        foreach (var (offer, ready) in from)
        {
            if (ready is not null)
            {
                at.Add(ready);
            }
            else if (Make(offer, ph, listed).TryGet(out var made, out _))
            {
                at.Add(made);
            }
        }

        return at;
    }
}
