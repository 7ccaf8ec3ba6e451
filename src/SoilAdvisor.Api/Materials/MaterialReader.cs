using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Planning;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Materials;

/// <summary>The one place where an offered material turns from words into types. A faulty one is left out and said.</summary>
internal static class MaterialReader
{
    public static readonly IReadOnlyDictionary<string, MaterialOrigin> Origins = new Dictionary<string, MaterialOrigin>(StringComparer.Ordinal)
    {
        ["own"] = MaterialOrigin.Own,
        ["local"] = MaterialOrigin.Local,
        ["bought"] = MaterialOrigin.Bought,
    };

    public static IReadOnlyList<MaterialOffer> Read(IReadOnlyList<WrittenMaterial>? written, string pointer, Tables tables, FaultList faults)
    {
        var offers = new List<MaterialOffer>();
        for (var i = 0; i < Math.Min(written?.Count ?? 0, Limits.Materials); i++)
        {
            var here = PointerPath.Down(pointer, i);
            if (faults.AnyWithin(here) || Read(written![i], here, tables, faults) is not { } offer)
            {
                continue;
            }

            if (offers.Exists(o => o.Material.Id == offer.Material.Id))
            {
                faults.Add(PointerPath.Down(here, "material"), "material-listed-twice", $"{offer.Material.Id} stands twice in the list of materials.", "Keep one entry with its price and stock.");
            }
            else
            {
                offers.Add(offer);
            }
        }

        return offers;
    }

    /// <summary>Figures of a label or laboratory that the validator has judged.</summary>
    /// <param name="written">As received.</param>
    /// <param name="material">The material; null where it is not known.</param>
    /// <param name="pointer">Its place.</param>
    /// <param name="tables">The reference tables.</param>
    /// <param name="faults">Receives refusals.</param>
    public static GrowerAnalysis? ReadAnalysis(WrittenAnalysis? written, Material? material, string pointer, Tables tables, FaultList faults)
    {
        if (written is null)
        {
            return null;
        }

        // Calcium and magnesium of a compost are nutrients; those of a stone belong to its label.
        var isStone = material is { Category: "lime" } || written is not { NeutralisingValue: null, Sieves: null, SieveClasses: null, EffectiveValue: null };
        var stone = isStone ? StoneLabelReader.Read(written, pointer, tables, faults) : null;
        // Water of a stone belongs to its effective value, not to its nutrients.
        var moisture = stone is null || written.Basis == "dry" ? written.Moisture?.Number : null;
        return new GrowerAnalysis(written.N?.Number, written.P2O5?.Number, written.K2O?.Number, moisture, written.Basis == "dry")
        {
            Stone = stone,
            Ammonium = written.AmmoniumN?.Number,
            Nitrate = written.NitrateN?.Number,
            Phosphorus = written.Phosphorus?.Number,
            Potassium = written.Potassium?.Number,
            Calcium = stone is null ? written.Calcium?.Number : null,
            Magnesium = stone is null ? written.Magnesium?.Number : null,
            Sulfur = written.Sulfur?.Number,
            Sodium = written.Sodium?.Number,
            Carbon = written.Carbon?.Number,
            CarbonToNitrogen = written.CarbonToNitrogen?.Number,
            Metals = ReadMetals(written.Metals, PointerPath.Down(pointer, "metals"), faults),
            Salt = written.Salt is { Value.Number: { } conductivity, Extract: { } extract } ? new TestedSalt(Conductivity.FromDecisiemensPerMetre((double)conductivity), extract) : null,
            From = string.IsNullOrWhiteSpace(written.From) ? null : written.From.Trim(),
            Date = Dates.Read(written.Date),
        };
    }

    private static Dictionary<Metal, MetalContent> ReadMetals(IReadOnlyList<WrittenMetal>? written, string pointer, FaultList faults)
    {
        var metals = new Dictionary<Metal, MetalContent>();
        for (var i = 0; i < (written?.Count ?? 0); i++)
        {
            if (written![i] is { Metal: { } name, Value.Number: { } value } && Enum.TryParse<Metal>(name, out var metal) && !metals.TryAdd(metal, MetalContent.FromMilligramsPerKilogramDry((double)value)))
            {
                faults.Add(PointerPath.Down(PointerPath.Down(pointer, i), "metal"), "metal-twice", $"{name} stands twice.", "Keep one result a metal.");
            }
        }

        return metals;
    }

    private static MaterialOffer? Read(WrittenMaterial written, string pointer, Tables tables, FaultList faults)
    {
        var before = faults.Count;
        var material = Named.Read(written.Material, PointerPath.Down(pointer, "material"), tables.Material, faults);
        var price = ReadPrice(written.Price, PointerPath.Down(pointer, "price"), faults);
        var onHand = UnitWords.ReadMass(written.OnHand, PointerPath.Down(pointer, "onHand"), faults);
        var tested = ReadAnalysis(written.Analysis, material, PointerPath.Down(pointer, "analysis"), tables, faults);
        var pack = UnitWords.ReadMass(written.Pack, PointerPath.Down(pointer, "pack"), faults);
        var most = ReadCap(written.Most, PointerPath.Down(pointer, "most"), faults);
        return material is not null && faults.Count == before
            ? new MaterialOffer(material, tested, price, onHand)
            {
                Pack = pack,
                Freight = ReadMoney(written.Freight),
                Origin = written.Origin is { } origin ? Origins[origin] : MaterialOrigin.Bought,
                Most = most,
            }
            : null;
    }

    private static RateCap? ReadCap(WrittenCap? written, string pointer, FaultList faults) =>
        UnitWords.ReadRate(written is null ? null : new WrittenQuantity { Value = written.Value, Unit = written.Unit }, pointer, faults) is { } most
            ? new RateCap(most, string.IsNullOrWhiteSpace(written!.Reason) ? "the largest rate named in the request" : written.Reason.Trim(), new Citation("our-judgement", "largest rate named in the request", Evidence.Ours))
            : null;

    /// <summary>An amount of money that the validator has judged.</summary>
    public static Money? ReadMoney(WrittenMoney? written) => written is { Value.Number: { } value, Currency: { } currency } ? new Money(value, currency) : null;

    /// <summary>A price that the validator has judged, for one kilogram.</summary>
    public static Money? ReadPrice(WrittenPrice? written, string pointer, FaultList faults) =>
        written is { Value.Number: { } value, Currency: { } currency } && UnitWords.ReadMass(written.Per, PointerPath.Down(pointer, "per"), faults) is { } per
            ? new Money(value / (decimal)per.Kilograms, currency)
            : null;
}
