using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Planning.MaterialChoice;

/// <summary>
/// Finds the best plan of a <see cref="MaterialModel"/>. Where not all floors can be met under the ceilings, the plan that misses the
/// smallest share of them is found first, and then the best way to reach exactly that. Ceilings are never exceeded.
/// </summary>
internal static class MaterialSolver
{
    // Rates of spreading below this are the solver's dust: nobody can weigh them out.
    private const double DustPoundsPerAcre = 0.05;

    // What dropping one may add to the gaps, in pounds per acre: less than any figure that is shown.
    private const double GapRounding = 1e-4;

    /// <summary>Solves the model. The native solver is loaded only when a floor is above zero.</summary>
    /// <param name="model">The model.</param>
    public static MaterialSolution Solve(MaterialModel model)
    {
        if (model.NeedsNothing)
        {
            return MaterialSolution.Nothing(model);
        }

        using var programme = new LinearProgramme(model);
        return Tidy(model, programme.LeastBurden() ?? programme.LeastMissing());
    }

    /// <summary>Rates of a solver made fit to be spread: within every ceiling to the last bit, without dust, with what each floor is missed by.</summary>
    /// <param name="model">The model.</param>
    /// <param name="amounts">Rates of its variables, pounds per acre.</param>
    public static MaterialSolution Tidy(MaterialModel model, double[] amounts)
    {
        for (var i = 0; i < amounts.Length; i++)
        {
            amounts[i] = Math.Clamp(amounts[i], 0, model.Variables[i].Most.PoundsPerAcre);
        }

        // A material that ties up nitrogen lifts the nitrogen of the rest when it is cut, hence more than one round.
        for (var round = 0; round < 8 && !WithinCeilings(model, amounts); round++)
        {
            KeepUnderCeilings(model, amounts);
        }

        DropDust(model, amounts);
        return new MaterialSolution([.. amounts.Select(MassPerArea.FromPoundsPerAcre)], [.. model.Requirements.Select(r => Missed(model, r, amounts))]);
    }

    // The solver keeps a ceiling to about one part in ten million. A ceiling here is a limit of safety or law, so the last bits are
    // taken off the rates that press against it.
    private static void KeepUnderCeilings(MaterialModel model, double[] amounts)
    {
        foreach (var requirement in model.Requirements)
        {
            if (requirement.Ceiling is not { } ceiling || Supply(model, requirement, amounts) is var supply && supply <= ceiling.PoundsPerAcre)
            {
                continue;
            }

            var factor = ceiling.PoundsPerAcre / supply;
            for (var i = 0; i < amounts.Length; i++)
            {
                if (requirement.Counts(model.Variables[i].PlantingIndex) && model.Variables[i].Share(requirement.Nutrient) > 0)
                {
                    amounts[i] *= factor;
                }
            }
        }
    }

    private static void DropDust(MaterialModel model, double[] amounts)
    {
        for (var i = 0; i < amounts.Length; i++)
        {
            if (amounts[i] is 0 or >= DustPoundsPerAcre)
            {
                continue;
            }

            var kept = amounts[i];
            var before = Gaps(model, amounts);
            amounts[i] = 0;
            if (Gaps(model, amounts) > before + GapRounding || !WithinCeilings(model, amounts))
            {
                amounts[i] = kept;
            }
        }
    }

    private static bool WithinCeilings(MaterialModel model, double[] amounts) =>
        model.Requirements.All(r => r.Ceiling is not { } ceiling || Supply(model, r, amounts) <= ceiling.PoundsPerAcre * (1 + 1e-12));

    private static double Gaps(MaterialModel model, double[] amounts) => model.Requirements.Sum(r => Math.Max(0, Gap(model, r, amounts)));

    private static double Gap(MaterialModel model, Requirement requirement, double[] amounts) =>
        requirement.Floor is { } floor ? floor.PoundsPerAcre - Supply(model, requirement, amounts) : 0;

    private static MassPerArea Missed(MaterialModel model, Requirement requirement, double[] amounts)
    {
        var missed = Gap(model, requirement, amounts);
        return missed > Requirement.RoundingPoundsPerAcre ? MassPerArea.FromPoundsPerAcre(missed) : default;
    }

    private static double Supply(MaterialModel model, Requirement requirement, double[] amounts)
    {
        var supply = 0.0;
        for (var i = 0; i < amounts.Length; i++)
        {
            if (amounts[i] != 0 && requirement.Counts(model.Variables[i].PlantingIndex))
            {
                supply += amounts[i] * model.Variables[i].Share(requirement.Nutrient);
            }
        }

        return supply;
    }
}
