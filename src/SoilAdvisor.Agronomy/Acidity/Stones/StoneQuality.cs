using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using static System.FormattableString;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>What a stone is worth by one state's index: neutralising value, grind, and water where the state counts it.</summary>
public static class StoneQuality
{
    /// <summary>The effective value; refused when the analysis lacks a sieve that the index needs.</summary>
    /// <param name="index">The index.</param>
    /// <param name="neutralisingValue">Calcium carbonate equivalent of the dry stone; not capped at 100 %.</param>
    /// <param name="sieves">Its grind.</param>
    /// <param name="moisture">Water in it; null when not said.</param>
    /// <param name="valueFrom">Where the neutralising value comes from.</param>
    /// <param name="working">Receives the lines; null for none.</param>
    public static Answer<EffectiveValue> Of(LimeIndex index, MassShare neutralisingValue, ISieveAnalysis sieves, MassShare? moisture, Origin valueFrom, WorkingSheet? working = null)
    {
        if (!FinenessOf(index, sieves, working).TryGet(out var fineness, out var refusal))
        {
            return Answer<EffectiveValue>.Refused(refusal);
        }

        var noticed = new List<Assumption>(sieves.Noticed);
        var grind = Origin.Line(working?.LastLine ?? 0);
        if (index.CountsMoisture)
        {
            if (moisture is null)
            {
                noticed.Add(new Assumption("stone-taken-as-dry", $"No water content of the stone is given; {index.Title} counts it, and it is taken as dry.", Citation.OurJudgement));
            }

            var formula = index.FormulaId == StoneFormulas.EcceIowa.Id ? StoneFormulas.EcceIowa : StoneFormulas.Enp;
            var wet = formula.Of((neutralisingValue, fineness, moisture ?? default), working, valueFrom, grind, Origin.Given(moisture is null ? "water not given: taken as dry" : "water of the stone"));
            return Given(index, wet, noticed);
        }

        if (moisture is { Fraction: > 0 })
        {
            noticed.Add(new Assumption("stone-water-not-counted", $"{index.Title} does not take the water of the stone off.", index.Source));
        }

        return DryFormulaOf(index) is { } dry
            ? Given(index, dry.Of((neutralisingValue, fineness), working, valueFrom, grind), noticed)
            : Unknown(index);
    }

    private static Answer<EffectiveValue> Given(LimeIndex index, MassShare value, IReadOnlyList<Assumption> noticed) =>
        Answer<EffectiveValue>.Given(new EffectiveValue(index, index.Unit == "%" ? value.Percent : value.PoundsPerShortTon, noticed));

    private static Formula<(MassShare NeutralisingValue, Fineness Fineness), MassShare>? DryFormulaOf(LimeIndex index) =>
        new[] { StoneFormulas.EnmMissouri, StoneFormulas.EnvNewYork, StoneFormulas.Rnv, StoneFormulas.EffectiveBritishColumbia, StoneFormulas.EcceOklahoma, StoneFormulas.EccKansas }
            .FirstOrDefault(f => f.Id == index.FormulaId);

    private static Answer<EffectiveValue> Unknown(LimeIndex index) =>
        Answer<EffectiveValue>.Refused("lime-index-not-held", $"The rule of {index.Title} is not held, so no sieve analysis is read by it.", "Give the score that the label prints.");

    private static Answer<Fineness> FinenessOf(LimeIndex index, ISieveAnalysis sieves, WorkingSheet? working) => index.FormulaId switch
    {
        "lime-ecce-iowa" => Of(index, sieves, [4, 8, 60], p => FinenessFormulas.Iowa.Of((p[0], p[1], p[2]), working, Reported, Reported, Reported)),
        "lime-enm-missouri" => Of(index, sieves, [(8, 40), (40, 60)], 60, (c, finest) => FinenessFormulas.Missouri.Of((c[0], c[1], finest), working, Reported, Reported, Reported)),
        "lime-env-new-york" => Of(index, sieves, [20, 60, 100], p => FinenessFormulas.NewYork.Of((p[0], p[1], p[2]), working, Reported, Reported, Reported)),
        "lime-rnv" => Of(index, sieves, [10, 50], p => FinenessFormulas.Mississippi.Of((p[0], p[1]), working, Reported, Reported)),
        "lime-enp" or "lime-effective-british-columbia" => Of(index, sieves, [(8, 20), (20, 60)], 60, (c, finest) => FinenessFormulas.Ohio.Of((c[0], c[1], finest), working, Reported, Reported, Reported)),
        "lime-ecce-oklahoma" => Of(index, sieves, [8, 60], p => FinenessFormulas.Oklahoma.Of((p[0], p[1]), working, Reported, Reported)),
        "lime-ecc-kansas" => Of(index, sieves, [(8, 60)], 60, (c, finest) => FinenessFormulas.Kansas.Of((c[0], finest), working, Reported, Reported)),
        _ => Answer<Fineness>.Refused(Unknown(index).Reason),
    };

    private static Origin Reported => Origin.Given("sieve analysis of the stone");

    private static Answer<Fineness> Of(LimeIndex index, ISieveAnalysis sieves, int[] meshes, Func<PassingShare[], Fineness> arithmetic)
    {
        var missing = meshes.Where(m => sieves.Passing(m) is null).ToList();
        return missing.Count == 0 ? Answer<Fineness>.Given(arithmetic([.. meshes.Select(m => sieves.Passing(m)!.Value)])) : Missing(index, missing);
    }

    private static Answer<Fineness> Of(LimeIndex index, ISieveAnalysis sieves, (int Passing, int RetainedOn)[] classes, int finest, Func<SieveClassShare[], SieveClassShare, Fineness> arithmetic)
    {
        var missing = classes.Where(c => sieves.Between(c.Passing, c.RetainedOn) is null).SelectMany(c => new[] { c.Passing, c.RetainedOn }).Distinct().ToList();
        return missing.Count == 0 && sieves.Passing(finest) is { } rest
            ? Answer<Fineness>.Given(arithmetic([.. classes.Select(c => sieves.Between(c.Passing, c.RetainedOn)!.Value)], SieveClassShare.FromPercent(rest.Percent)))
            : Missing(index, missing.Count > 0 ? missing : [finest]);
    }

    private static Answer<Fineness> Missing(LimeIndex index, IReadOnlyList<int> meshes) => Answer<Fineness>.Refused(
        "sieve-missing",
        $"{index.Title} needs sieve {string.Join(" and ", meshes.Select(m => Invariant($"{m}")))}, which the sieve analysis does not give.",
        "Ask the quarry for the full sieve analysis, or give the score printed on the label.");
}
