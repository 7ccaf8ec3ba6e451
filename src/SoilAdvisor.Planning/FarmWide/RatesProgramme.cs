using System.Globalization;
using Google.OrTools.LinearSolver;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// The rates of all groups as one linear programme, for a set of products and, where wanted, a fixed amount of each. Built once;
/// every further question only moves bounds and starts from the answer before.
/// </summary>
internal sealed class RatesProgramme : IDisposable
{
    private const double Nothing = 1e-9;

    private readonly FarmModel model;
    private readonly Solver solver;
    private readonly Objective objective;
    private readonly MPSolverParameters parameters = new();
    private readonly List<Variable[]> rates = [];
    private readonly List<int[]> products = [];
    private readonly Variable[] bought;
    private int names;

    public RatesProgramme(FarmModel model)
    {
        this.model = model;
        solver = Solver.CreateSolver("GLOP") ?? throw new InvalidOperationException("The linear solver GLOP is not in this build of OR-Tools.");
        parameters.SetIntegerParam(MPSolverParameters.IntegerParam.INCREMENTALITY, (int)MPSolverParameters.IncrementalityValues.INCREMENTALITY_ON);
        objective = solver.Objective();
        objective.SetMinimization();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        bought = new Variable[model.Products.Count];
        var taken = new Constraint[model.Products.Count];
        for (var p = 0; p < bought.Length; p++)
        {
            var product = model.Products[p];
            places[product.Offered.Material.Id] = p;
            bought[p] = solver.MakeNumVar(0, Most(p), Next());
            objective.SetCoefficient(bought[p], product.PricePerPound);
            taken[p] = solver.MakeConstraint(double.NegativeInfinity, product.LeftPounds, Next());
            taken[p].SetCoefficient(bought[p], -1);
        }

        foreach (var group in model.Groups)
        {
            var amounts = group.Model.Variables.Select(v => solver.MakeNumVar(0, v.Most.PoundsPerAcre, Next())).ToArray();
            var of = group.Model.Variables.Select(v => places[v.Offered.Material.Id]).ToArray();
            for (var i = 0; i < amounts.Length; i++)
            {
                taken[of[i]].SetCoefficient(amounts[i], group.Acres);
                objective.SetCoefficient(amounts[i], model.MassBurden * group.Acres);
            }

            BedRows.Add(solver, objective, group, amounts, model.ExcessBurden, FarmModel.MissedBurden, Next);
            rates.Add(amounts);
            products.Add(of);
        }
    }

    /// <summary>Lets only these products be spread, and any amount be bought.</summary>
    /// <param name="open">The products.</param>
    public void Open(IReadOnlySet<int> open)
    {
        for (var g = 0; g < rates.Count; g++)
        {
            for (var i = 0; i < rates[g].Length; i++)
            {
                rates[g][i].SetBounds(0, open.Contains(products[g][i]) ? model.Groups[g].Model.Variables[i].Most.PoundsPerAcre : 0);
            }
        }

        for (var p = 0; p < bought.Length; p++)
        {
            bought[p].SetBounds(0, Most(p));
        }
    }

    /// <summary>Lets at most so much of a product be bought.</summary>
    /// <param name="product">The product.</param>
    /// <param name="pounds">How much.</param>
    public void Buy(int product, double pounds) => bought[product].SetUb(Math.Min(pounds, Most(product)));

    /// <summary>Keeps a rate within bounds.</summary>
    /// <param name="group">The group.</param>
    /// <param name="variable">The variable of its model.</param>
    /// <param name="least">Least, pounds per acre.</param>
    /// <param name="most">Most, pounds per acre.</param>
    public void Keep(int group, int variable, double least, double most) => rates[group][variable].SetBounds(least, most);

    /// <summary>The least burden with money by the pound, or null when the bounds contradict each other.</summary>
    public double? Least() => solver.Solve(parameters) == Solver.ResultStatus.OPTIMAL ? objective.Value() : null;

    /// <summary>After <see cref="Least"/>: the rates, with the solver's dust taken off.</summary>
    public IReadOnlyList<double[]> Rates() => [.. rates.Select(r => r.Select(v => v.SolutionValue() < Nothing ? 0 : v.SolutionValue()).ToArray())];

    /// <summary>After <see cref="Least"/>: what counts beside money for products: mass, excess and needs missed.</summary>
    public double BesideMoney() => objective.Value() - Enumerable.Range(0, bought.Length).Sum(p => bought[p].SolutionValue() * model.Products[p].PricePerPound);

    /// <summary>After <see cref="Least"/>: pounds bought of each product.</summary>
    public double[] Bought() => [.. bought.Select(b => b.SolutionValue())];

    public void Dispose()
    {
        parameters.Dispose();
        solver.Dispose();
    }

    private double Most(int product) => model.Products[product].MayBeBought ? double.PositiveInfinity : 0;

    private string Next() => (++names).ToString(CultureInfo.InvariantCulture);
}
