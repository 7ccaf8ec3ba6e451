using SoilAdvisor.Agronomy.Composting;
using SoilAdvisor.Agronomy.ManureRates;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Mistakes;

/// <summary>The mistakes that are shown. Which ones are common is our judgement; that older bulletins count all nitrogen as available is in print.</summary>
public static class CommonMistakes
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<CommonMistake> All { get; } =
    [
        new(
            "element-for-oxide",
            "Phosphorus taken for phosphate",
            "The soil test and the removal table count phosphorus (P), the label counts phosphate (P2O5). Taken one for the other, the crop gets less than half of what it needs.",
            "Look for the letters behind the number: P or P2O5, K or K2O.",
            OxideConversions.PhosphorusToPhosphate,
            Mistaken("element-for-oxide-mistaken", "Phosphorus written down as phosphate", "P2O5 = P", OxideConversions.PhosphorusToPhosphate, v => v["P"])),
        new(
            "ppm-as-pounds",
            "ppm read as pounds an acre",
            "The laboratory reports mg in a kilogram of soil (ppm). An acre of soil weighs about two million pounds for a layer of 6 to 7 inches, so each ppm is about 2 lb/acre, not 1.",
            "Look for the unit at the head of the report's column.",
            AreaFormulas.ConcentrationToMassPerArea,
            Mistaken("ppm-as-pounds-mistaken", "ppm written down as lb/acre", "A = c", AreaFormulas.ConcentrationToMassPerArea, v => v["c"])),
        new(
            "path-as-bed",
            "The path counted as bed",
            "The rate stands for the ground that is spread. Where only the bed top is spread and the path is counted with it, the bed gets too much, in the proportion of the two widths.",
            "Measure the bed top by itself, without the path.",
            BedFormulas.BedTopArea,
            Mistaken("path-as-bed-mistaken", "Area of bed and path, where only the bed is spread", "A = L × C", BedFormulas.BedTopArea, v => v["L"] * v["C"], BedFormulas.BedAndPathArea.Inputs[1])),
        new(
            "averaged-ratios",
            "Ratios averaged",
            "A carbon to nitrogen ratio is a quotient. The ratio of a mix is the sum of carbon over the sum of nitrogen. The average of the ratios, even weighted by weight, gives far too high a ratio, and the heap gets too little carbon.",
            "Add pounds of carbon and pounds of nitrogen first, then divide once.",
            CompostFormulas.CarbonToNitrogenOfMix,
            Mistaken("averaged-ratios-mistaken", "Average of the ratios by wet weight", "R = (Q1 × C1 / N1 + Q2 × C2 / N2) / (Q1 + Q2)", CompostFormulas.CarbonToNitrogenOfMix, v => ((v["Q1"] * v["C1"] / v["N1"]) + (v["Q2"] * v["C2"] / v["N2"])) / (v["Q1"] + v["Q2"]))),
        new(
            "total-for-available",
            "Total nitrogen taken for available nitrogen",
            "Most nitrogen of a compost stays bound for years. A rate worked on the total gives the crop a fraction of what it needs; corrected, the rate can lay down years of phosphate. Older bulletins print rates worked on the total.",
            "Ask which nitrogen a figure counts: total, or available in the season.",
            AvailableNitrogenFormulas.MaterialForNitrogen,
            Mistaken("total-for-available-mistaken", "Rate worked on total nitrogen", "M = N × 100 / t", AvailableNitrogenFormulas.MaterialForNitrogen, v => v["N"] * 100 / v["t"])),
        new(
            "dry-as-spread",
            "Dry figures used for moist material",
            "Laboratories report manure and compost dry; the spreader carries water too. A dry figure on moist material counts nutrients that are not there.",
            "Look for the words dry basis or as received on the report.",
            MaterialFormulas.DryToAsIs,
            Mistaken("dry-as-spread-mistaken", "Content in dry matter taken as it is", "a = d", MaterialFormulas.DryToAsIs, v => v["d"])),
    ];

    // The mistaken way shares symbols, units and limits with the right one; a letter of its own stands last.
    private static Formula<IReadOnlyDictionary<string, double>, double> Mistaken(
        string id, string title, string shown, IFormula right, Func<IReadOnlyDictionary<string, double>, double> arithmetic, params Symbol[] more)
    {
        Symbol[] symbols = [.. right.Inputs.Where(s => Stands(shown, s.Name)), .. more];
        return new(
            id,
            title,
            shown,
            Citation.OurJudgement,
            [.. symbols.Select(s => new FormulaInput<IReadOnlyDictionary<string, double>>(s, x => x[s.Name]))],
            new(right.Result, y => y),
            v => symbols.Select((s, i) => (s.Name, Value: v[i])).ToDictionary(p => p.Name, p => p.Value, StringComparer.Ordinal),
            arithmetic,
            "It is wrong on purpose.");
    }

    private static bool Stands(string shown, string symbol) =>
        shown[(shown.IndexOf('=', StringComparison.Ordinal) + 1)..].Split([' ', '(', ')'], StringSplitOptions.RemoveEmptyEntries).Contains(symbol, StringComparer.Ordinal);
}
