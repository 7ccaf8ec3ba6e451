using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Materials;

/// <summary>
/// From published or tested figures to what one unit of a material, as it is spread, supplies in the season. The low end of a range is
/// planned with, the high end is kept beside it. Totals count toward ceilings, available shares toward needs.
/// </summary>
public static class MaterialAnalyses
{
    private static readonly (Nutrient Nutrient, string Property, bool ComesOnlyInSeason)[] TakenWhole =
    [
        (Nutrient.Ca, "calcium", true),
        (Nutrient.Mg, "magnesium", true),
        (Nutrient.S, "sulfur", true),
        (Nutrient.CalciumCarbonate, "neutralising-value", true),
        (Nutrient.Na, "sodium", false),
        (Nutrient.Cl, "chloride", false),
        (Nutrient.C, "carbon", false),
    ];

    /// <summary>The part of the phosphate or potash of a material that comes in the first season: A = T × f.</summary>
    public static Formula<(MassShare Total, Coefficient Available), MassShare> AvailableOfTotal { get; } = new(
        "available-oxide-of-total",
        "Phosphate or potash available in the first season, from the total",
        "A = T × f",
        Citation.OurArithmetic,
        [
            new(new Symbol("T", "total P2O5 or K2O of the material as spread", "%", 0, 100), x => x.Total.Percent),
            new(new Symbol("f", "part of it that comes in the first season", "", 0, 1), x => x.Available.Value),
        ],
        new(new Symbol("A", "available P2O5 or K2O of the material as spread", "%"), y => y.Percent),
        v => (MassShare.FromPercent(v[0]), new Coefficient(v[1])),
        x => MassShare.FromFraction(x.Total.Fraction * x.Available.Value),
        "A product of two published figures; no publication that was read works it as an example.");

    /// <summary>Phosphate of a material from the phosphorus that a laboratory reports.</summary>
    public static Formula<MassShare, MassShare> OfPhosphorus { get; } = new(
        "phosphate-content-of-phosphorus",
        "Phosphate of a material from its phosphorus",
        "P2O5 = P × (2 × 30.973762 + 5 × 15.999) / (2 × 30.973762)",
        Citation.AtomicMasses,
        [new(new Symbol("P", "phosphorus (element) of the material", "%", 0, 43), x => x.Percent)],
        new(new Symbol("P2O5", "phosphate of the material", "%"), y => y.Percent),
        v => MassShare.FromPercent(v[0]),
        x => MassShare.FromFraction(x.Fraction * OxideConversions.PhosphateOfPhosphorus),
        "An exact ratio of atomic weights; what publications print is rounded.");

    /// <summary>Potash of a material from the potassium that a laboratory reports.</summary>
    public static Formula<MassShare, MassShare> OfPotassium { get; } = new(
        "potash-content-of-potassium",
        "Potash of a material from its potassium",
        "K2O = K × (2 × 39.0983 + 15.999) / (2 × 39.0983)",
        Citation.AtomicMasses,
        [new(new Symbol("K", "potassium (element) of the material", "%", 0, 83), x => x.Percent)],
        new(new Symbol("K2O", "potash of the material", "%"), y => y.Percent),
        v => MassShare.FromPercent(v[0]),
        x => MassShare.FromFraction(x.Fraction * OxideConversions.PotashOfPotassium),
        "An exact ratio of atomic weights; what publications print is rounded.");

    /// <summary>What the material supplies in the season of spreading.</summary>
    /// <param name="material">The material.</param>
    /// <param name="soilPhAfterLiming">Soil pH (water) once this season's lime has acted; null when not known. Decides whether phosphate rock counts.</param>
    /// <param name="tested">Label or laboratory figures that override the tables; null for none.</param>
    /// <param name="working">Receives a line for each step; null for none.</param>
    /// <returns>
    /// The analysis, or a refusal: analysis-out-of-range, moisture-missing, or material-figure-missing when a manure, compost or meal has no
    /// phosphate figure, because then no phosphorus ceiling can be kept. Of a prohibited material nothing is counted.
    /// </returns>
    public static Answer<MaterialAnalysis> For(Material material, decimal? soilPhAfterLiming, GrowerAnalysis? tested, WorkingSheet? working = null)
    {
        if (tested is not null && Fault(material, tested) is { } fault)
        {
            return Answer<MaterialAnalysis>.Refused(fault);
        }

        if (material.Status == OrganicStatus.Prohibited)
        {
            return Answer<MaterialAnalysis>.Given(NothingCounted(material));
        }

        if ((material.Basis == "dry" || tested is { Dry: true }) && tested?.Moisture is null && material.ValueOf("moisture") is null)
        {
            return Answer<MaterialAnalysis>.Refused(
                "moisture-missing",
                $"The figures of {material.Name} refer to dry matter and no moisture is known.",
                "Give its moisture in percent: weigh a handful, dry it until it loses no more, weigh it again.");
        }

        if (tested is not { P2O5: not null } and not { Phosphorus: not null } && material.ValueOf("total-p2o5") is null && material.Category is "manure" or "processed-manure" or "compost" or "animal-meal" or "plant-meal")
        {
            return Answer<MaterialAnalysis>.Refused(
                "material-figure-missing",
                $"No phosphate (P2O5) figure of {material.Name} is held, so no phosphorus limit could be kept.",
                "Give its analysis in percent: N, P2O5, K2O and moisture, from the label or a laboratory.");
        }

        return Answer<MaterialAnalysis>.Given(new Sheet(material, tested, working).Fill(soilPhAfterLiming));
    }

    // Its figures never matter: it is never planned, and where it was spread the finding is what counts.
    private static MaterialAnalysis NothingCounted(Material material) => new(
        new Dictionary<Nutrient, double>(),
        new Dictionary<Nutrient, double>(),
        new Dictionary<Nutrient, IReadOnlyList<Citation>>(),
        [new Assumption("prohibited-not-counted", $"{material.Name} is prohibited on organic ground: nothing of it is counted.", material.Source)]);

    private static Refusal? Fault(Material material, GrowerAnalysis tested)
    {
        if ((tested.Ammonium ?? tested.Nitrate) is not null && !(tested.N >= (tested.Ammonium ?? 0) + (tested.Nitrate ?? 0)))
        {
            return new Refusal(
                "nitrogen-forms",
                tested.N is null
                    ? $"The analysis of {material.Name} gives ammonium or nitrate nitrogen without total nitrogen."
                    : $"Ammonium and nitrate nitrogen of {material.Name} add up to more than its total nitrogen.",
                "Give total nitrogen, ammonium-N and nitrate-N of one report, all in percent and on the same basis: NH4-N and NO3-N, not NH4 and NO3.");
        }

        if ((tested.P2O5 is not null && tested.Phosphorus is not null) || (tested.K2O is not null && tested.Potassium is not null))
        {
            return new Refusal(
                "analysis-form-twice",
                $"The analysis of {material.Name} holds phosphorus or potassium both as the element and as the oxide.",
                "Keep the form that the report prints: p2o5 or phosphorus, k2o or potassium.");
        }

        if (tested.CarbonToNitrogen is <= 0)
        {
            return new Refusal("analysis-out-of-range", $"The carbon to nitrogen ratio of {material.Name} is not above zero.", "Give the ratio as one number, for example 14 for 14:1.");
        }

        decimal?[] figures = [tested.N, tested.P2O5, tested.K2O, tested.Phosphorus, tested.Potassium, tested.Calcium, tested.Magnesium, tested.Sulfur, tested.Sodium, tested.Carbon, tested.Moisture, tested.Ammonium, tested.Nitrate];
        var sum = (tested.N ?? 0) + (tested.P2O5 ?? tested.Phosphorus ?? 0) + (tested.K2O ?? tested.Potassium ?? 0) + (tested.Calcium ?? 0) + (tested.Magnesium ?? 0) + (tested.Sulfur ?? 0) + (tested.Sodium ?? 0) + (tested.Carbon ?? 0);
        return figures.All(f => f is null or (>= 0 and <= 100)) && tested.Moisture is not 100 && sum <= 100
            ? null
            : new Refusal(
                "analysis-out-of-range",
                $"The analysis of {material.Name} holds a figure outside 0 to 100 %, or figures that add up to more than 100 %.",
                "Give each figure in percent by mass; moisture must be below 100 %.");
    }

    /// <summary>The two ends of a figure and where it stands.</summary>
    private readonly record struct Figure(decimal Low, decimal High, Citation Source)
    {
        public static Figure Of(MaterialValue row)
        {
            var low = row.Value ?? row.Low ?? 0;
            return new(low, Math.Max(low, row.High ?? row.Value ?? row.Low ?? 0), row.Source);
        }
    }

    private sealed class Sheet(Material material, GrowerAnalysis? tested, WorkingSheet? working)
    {
        private readonly Dictionary<Nutrient, double> planned = [];
        private readonly Dictionary<Nutrient, double> high = [];
        private readonly Dictionary<Nutrient, IReadOnlyList<Citation>> sources = [];
        private readonly List<Assumption> assumptions = [];
        private readonly Citation givenByTheGrower = new("our-arithmetic", Place(tested), Evidence.Ours);
        private NitrogenContent? nitrogen;

        public MaterialAnalysis Fill(decimal? soilPhAfterLiming)
        {
            SayMoisture();
            Nitrogen();
            Phosphate(soilPhAfterLiming);
            Potash();
            foreach (var (nutrient, property, onlyInSeason) in TakenWhole)
            {
                if (Labelled(nutrient) is { } labelled)
                {
                    var dry = nutrient == Nutrient.CalciumCarbonate || tested!.Stone is not null ? IsDry : tested.Dry;
                    Put(nutrient, Spread(labelled, new Figure(labelled, labelled, givenByTheGrower), dry), SpreadHigh(labelled, dry), givenByTheGrower);
                }
                else if (material.ValueOf(property) is { } row && (material.CountedInSeason || !onlyInSeason))
                {
                    var figure = Figure.Of(row);
                    Put(nutrient, Spread(figure.Low, figure, dry: IsDry), SpreadHigh(figure.High, IsDry), figure.Source);
                }
            }

            if (!material.CountedInSeason)
            {
                Assume("not-counted-in-season", $"{material.Name} gives its nutrients over years: none is counted toward this season's need.", material.Source);
            }

            return new MaterialAnalysis(planned, high, sources, assumptions) 
            {
                Label = tested?.Stone,
                Nitrogen = nitrogen,
                CarbonToNitrogen = tested?.CarbonToNitrogen,
                DryMatter = Moisture is { } water ? 100 - water : null,
            };
        }

        private decimal? Labelled(Nutrient nutrient) => nutrient switch
        {
            Nutrient.CalciumCarbonate => tested?.Stone?.NeutralisingValue,
            Nutrient.Ca => tested?.Calcium ?? tested?.Stone?.Calcium,
            Nutrient.Mg => tested?.Magnesium ?? tested?.Stone?.Magnesium,
            Nutrient.S => tested?.Sulfur,
            Nutrient.Na => tested?.Sodium,
            Nutrient.C => tested?.Carbon ?? (tested is { N: { } n, CarbonToNitrogen: { } ratio } ? Math.Min(100, n * ratio) : null),
            _ => null,
        };

        // Where a figure of the grower's own stands: the laboratory and the day are its source.
        private static string Place(GrowerAnalysis? tested)
        {
            var by = tested?.From is { Length: > 0 } from ? $" by {from}" : "";
            var day = tested?.Date is { } date ? $" of {PlainNumber.Date(date)}" : "";
            return $"analysis{by}{day}{(by.Length + day.Length > 0 ? "," : "")} given with the request";
        }

        private bool IsDry => material.Basis == "dry";

        private decimal? Moisture => tested?.Moisture ?? (material.ValueOf("moisture") is { } row ? row.Value ?? row.High ?? row.Low : null);

        private decimal WettestMoisture => tested?.Moisture ?? (material.ValueOf("moisture") is { } row ? row.Value ?? row.High ?? row.Low ?? 0 : 0);

        private decimal DriestMoisture => tested?.Moisture ?? (material.ValueOf("moisture") is { } row ? row.Low ?? row.Value ?? row.High ?? 0 : 0);

        private void SayMoisture()
        {
            if (IsDry || tested is { Dry: true })
            {
                if (tested?.Moisture is null && material.ValueOf("moisture") is { } row)
                {
                    Assume("moisture-from-table", $"{material.Name} is taken as {PlainNumber.Of(WettestMoisture)} % water. Weigh, dry and weigh a handful to be sure.", row.Source);
                }
            }
            else if (tested is { Moisture: not null, Metals.Count: 0 })
            {
                Assume("moisture-not-used", $"The moisture given for {material.Name} changes nothing: its figures already refer to the material as it is sold or spread.", material.Source);
            }
        }

        private void Nitrogen()
        {
            if (Total("total-nitrogen", tested?.N, "nitrogen") is not { } total)
            {
                return;
            }

            if (tested is { N: not null, Ammonium: { } ammonium, Factors: { } factors } && material.CountedInSeason)
            {
                NitrogenByForm(total.Planned, ammonium, tested.Nitrate, factors);
                return;
            }

            if (tested?.Ammonium is not null)
            {
                Assume("ammonium-not-used", $"Ammonium of {material.Name} was tested, and no publication that is held prints factors for its forms of nitrogen: its total is read instead.", givenByTheGrower);
            }

            nitrogen = new NitrogenContent(MassShare.FromFraction(total.Planned), MassShare.FromFraction(total.High), default, default, null);
            PutAvailable(Nutrient.AvailableN, total, "available-nitrogen-share", "nitrogen");
        }

        private void NitrogenByForm(double total, decimal ammonium, decimal? nitrate, NitrogenFactors factors)
        {
            if (nitrate is null)
            {
                Assume("nitrate-not-tested", $"Nitrate of {material.Name} was not tested and is taken as none; compost can hold some.", givenByTheGrower);
            }

            foreach (var assumption in factors.Assumptions)
            {
                assumptions.Add(assumption);
            }

            var given = new Figure(ammonium, ammonium, givenByTheGrower);
            var forms = (
                Total: MassShare.FromFraction(total),
                Ammonium: MassShare.FromFraction(Spread(ammonium, given, tested!.Dry)),
                Nitrate: MassShare.FromFraction(nitrate is { } found ? Spread(found, new Figure(found, found, givenByTheGrower), tested.Dry) : 0));
            var tests = Origin.Given("the laboratory's test of the material");
            var organic = NitrogenFormulas.OrganicNitrogen.Of(forms, working, tests, tests, tests);
            var low = MaterialFormulas.PlantAvailableNitrogenSplit.Of(
                (forms.Total, forms.Ammonium, forms.Nitrate, factors.FirstYear, factors.KeptLow), working, tests, tests, tests, Origin.From(factors.Release.Source), Origin.From(factors.KeptSource));
            var most = MaterialFormulas.PlantAvailableNitrogenSplit.Of((forms.Total, forms.Ammonium, forms.Nitrate, factors.FirstYear, factors.KeptHigh));
            nitrogen = new NitrogenContent(
                forms.Total,
                forms.Total,
                AtOnce(forms.Ammonium, factors.KeptLow, forms.Nitrate),
                AtOnce(forms.Ammonium, factors.KeptHigh, forms.Nitrate),
                organic);
            Put(Nutrient.AvailableN, low.Fraction, most.Fraction, givenByTheGrower, factors.Release.Source, factors.KeptSource);
        }

        private static MassShare AtOnce(MassShare ammonium, ShareOf<AmmoniumN> kept, MassShare nitrate) =>
            MassShare.FromFraction(NitrogenFormulas.AmmoniumKept.Of((ammonium, kept)).Fraction + nitrate.Fraction);

        private void Potash()
        {
            if (Total("k2o", tested?.K2O ?? Oxide(tested?.Potassium, OfPotassium), "potash") is { } total)
            {
                PutAvailable(Nutrient.K2O, total, "k2o-available-share", "potash");
            }
        }

        private void Phosphate(decimal? soilPhAfterLiming)
        {
            var label = material.ValueOf("available-p2o5");
            // An element is never a label's guarantee: only a laboratory reports it so, and as a total.
            var guaranteed = tested is { Dry: false, P2O5: { } given } && label is not null && material.ValueOf("total-p2o5") is not null && given <= (label.High ?? label.Value);
            if (Total("total-p2o5", guaranteed ? null : tested?.P2O5 ?? Oxide(tested?.Phosphorus, OfPhosphorus), "phosphate") is not { } total)
            {
                return;
            }

            Put(Nutrient.TotalP2O5, total.Planned, total.High, total.Source);
            if (guaranteed)
            {
                Assume(
                    "p2o5-taken-as-label-guarantee",
                    $"{PlainNumber.Of(tested!.P2O5!.Value)} % P2O5 is taken as what the label of {material.Name} guarantees as available; the total stays {PlainNumber.Of(total.Planned * 100)} %, as the tables print it.",
                    label!.Source);
            }

            if (!Dissolves(soilPhAfterLiming))
            {
                Put(Nutrient.AvailableP2O5, 0, 0, material.ValueOf("usable-below-ph")!.Source);
            }
            else if (guaranteed)
            {
                var share = material.CountedInSeason ? (double)tested!.P2O5!.Value / 100 : 0;
                Put(Nutrient.AvailableP2O5, share, share, givenByTheGrower);
            }
            else
            {
                PutAvailable(Nutrient.AvailableP2O5, total, "available-p2o5-share", "phosphate");
            }
        }

        private bool Dissolves(decimal? soilPhAfterLiming)
        {
            if (material.ValueOf("usable-below-ph") is not { } row || (row.Value ?? row.High) is not { } limit)
            {
                return true;
            }

            if (soilPhAfterLiming is { } ph && ph <= limit)
            {
                return true;
            }

            Assume(
                "phosphate-rock-not-counted",
                soilPhAfterLiming is { } above
                    ? $"{material.Name} counts nothing toward phosphate: it is usable up to pH {PlainNumber.Of(limit)} and the soil will stand at {PlainNumber.Of(above)}."
                    : $"{material.Name} counts nothing toward phosphate: it is usable up to pH {PlainNumber.Of(limit)} and the pH after liming is not known.",
                row.Source);
            return false;
        }

        private decimal? Oxide(decimal? element, Formula<MassShare, MassShare> conversion) => element is { } percent
            ? (decimal)conversion.Of(MassShare.FromPercent((double)percent), working, Origin.From(givenByTheGrower)).Percent
            : null;

        private (double Planned, double High, Citation Source)? Total(string property, decimal? given, string words)
        {
            if (given is { } value)
            {
                var figure = new Figure(value, value, givenByTheGrower);
                return (Spread(value, figure, tested!.Dry), SpreadHigh(value, tested.Dry), givenByTheGrower);
            }

            if (material.ValueOf(property) is { } row)
            {
                var figure = Figure.Of(row);
                return (Spread(figure.Low, figure, IsDry), SpreadHigh(figure.High, IsDry), figure.Source);
            }

            Assume("figure-unknown", $"No {words} figure of {material.Name} is held: none is counted.", material.Source);
            return null;
        }

        private double Spread(decimal percent, Figure figure, bool dry) => dry
            ? MaterialFormulas.DryToAsIs.Of(
                (MassShare.FromPercent((double)percent), MassShare.FromPercent((double)WettestMoisture)),
                working,
                Origin.From(figure.Source),
                tested?.Moisture is not null ? Origin.Given("moisture of the analysis") : Origin.From(material.ValueOf("moisture")!.Source)).Fraction
            : (double)percent / 100;

        private double SpreadHigh(decimal percent, bool dry) => (double)percent / 100 * (dry ? 1 - ((double)DriestMoisture / 100) : 1);

        private void PutAvailable(Nutrient nutrient, (double Planned, double High, Citation Source) total, string property, string words)
        {
            if (!material.CountedInSeason)
            {
                Put(nutrient, 0, 0, material.Source);
                return;
            }

            if (material.ValueOf(property) is not { } row)
            {
                if (total.High > 0)
                {
                    Assume("availability-unknown", $"No first-season share of the {words} in {material.Name} is held: none is counted.", material.Source);
                }

                Put(nutrient, 0, 0, total.Source);
                return;
            }

            var share = Figure.Of(row);
            var (whole, from) = (MassShare.FromFraction(total.Planned), new[] { Origin.From(total.Source), Origin.From(share.Source) });
            var low = nutrient == Nutrient.AvailableN
                ? MaterialFormulas.PlantAvailableNitrogenOfTotal.Of((whole, ShareOf<TotalN>.FromPercent((double)share.Low)), working, from).Fraction
                : AvailableOfTotal.Of((whole, new Coefficient((double)share.Low / 100)), working, from).Fraction;
            Put(nutrient, low, total.High * (double)share.High / 100, total.Source, share.Source);
        }

        private void Put(Nutrient nutrient, double low, double most, params Citation[] from)
        {
            planned[nutrient] = low;
            high[nutrient] = most;
            sources[nutrient] = [.. from.Distinct()];
        }

        private void Assume(string code, string text, Citation source) => assumptions.Add(new Assumption(code, text, source));
    }
}
