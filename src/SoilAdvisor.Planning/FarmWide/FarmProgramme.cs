using System.Globalization;
using Google.OrTools.LinearSolver;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.Planning.MaterialChoice;

namespace SoilAdvisor.Planning.FarmWide;

/// <summary>
/// A <see cref="FarmModel"/> inside the solver: whole packs, deliveries, passes and the limits of the farm beside the rows of every bed.
/// Rates in pounds per acre, purchases in pounds or packs. One use each: build, solve, dispose.
/// </summary>
internal sealed class FarmProgramme : IDisposable
{
    private const double MostPacks = 1e6;

    private readonly FarmModel model;
    private readonly bool whole;
    private readonly Solver solver;
    private readonly Objective objective;
    private readonly Dictionary<string, int> places = new(StringComparer.Ordinal);
    private readonly Variable[] used;
    private readonly Variable[] bought;
    private readonly Variable?[] delivered;
    private readonly Constraint[] taken;
    private readonly Constraint? budget;
    private readonly List<Variable[]> rates = [];
    private readonly List<Variable[]> passes = [];
    private int names;

    /// <summary>Builds the programme.</summary>
    /// <param name="model">The farm.</param>
    /// <param name="products">Which products may be used; null for all.</param>
    /// <param name="whole">True for whole packs and passes; false relaxes them, for the bound.</param>
    public FarmProgramme(FarmModel model, IReadOnlySet<int>? products, bool whole)
    {
        (this.model, this.whole) = (model, whole);
        var name = whole ? "SCIP" : "GLOP";
        solver = Solver.CreateSolver(name) ?? throw new InvalidOperationException($"The solver {name} is not in this build of OR-Tools.");
        objective = solver.Objective();
        objective.SetMinimization();
        budget = model.Limits.Budget is { } most ? solver.MakeConstraint(double.NegativeInfinity, (double)most.Value, "budget") : null;
        var count = model.Products.Count;
        (used, bought, delivered, taken) = (new Variable[count], new Variable[count], new Variable?[count], new Constraint[count]);
        var mostProducts = model.Limits.Products is { } limit ? solver.MakeConstraint(0, limit, "products") : null;
        for (var p = 0; p < count; p++)
        {
            places[model.Products[p].Offered.Material.Id] = p;
            AddProduct(p, products is null || products.Contains(p), mostProducts);
        }

        foreach (var group in model.Groups)
        {
            AddGroup(group);
        }
    }

    /// <summary>Solves. Spreading nothing keeps every limit, so there is always an answer unless the time is up before the first.</summary>
    /// <param name="effort">How far to go.</param>
    /// <param name="start">A plan to start from; null for none.</param>
    public FarmSolution? Solve(Effort effort, FarmSolution? start = null)
    {
        solver.SetTimeLimit((long)(effort.Seconds * 1000));
        if (whole)
        {
            solver.SetSolverSpecificParametersAsString(string.Create(
                CultureInfo.InvariantCulture,
                $"limits/gap = {effort.Gap}\nlimits/totalnodes = {effort.Branches}\nrandomization/randomseedshift = 0\n"));
        }

        if (start is not null)
        {
            Hint(start);
        }

        var status = solver.Solve();
        if (status is not (Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE))
        {
            return null;
        }

        var ended = status == Solver.ResultStatus.OPTIMAL ? SearchEnd.Proven : whole && solver.Nodes() >= effort.Branches ? SearchEnd.Branches : SearchEnd.Time;
        return new FarmSolution(
            [.. rates.Select(r => r.Select(v => v.SolutionValue()).ToArray())],
            [.. bought.Select((b, p) => b.SolutionValue() * PoundsOf(p))],
            objective.Value(),
            whole ? objective.BestBound() : objective.Value(),
            ended);
    }

    /// <summary>After a solve: the places of the products that are used, most used first.</summary>
    public IEnumerable<int> Used() => Enumerable.Range(0, used.Length).Where(p => used[p].SolutionValue() > 1e-6).OrderByDescending(p => used[p].SolutionValue());

    public void Dispose() => solver.Dispose();

    private double PoundsOf(int product) => model.Products[product].PackPounds ?? 1;

    private Variable Switch(double most = 1) => whole ? solver.MakeIntVar(0, most, Next()) : solver.MakeNumVar(0, most, Next());

    private Constraint AtMost(double most) => solver.MakeConstraint(double.NegativeInfinity, most, Next());

    private string Next() => (++names).ToString(CultureInfo.InvariantCulture);

    private void Costs(Variable variable, double money)
    {
        objective.SetCoefficient(variable, money);
        budget?.SetCoefficient(variable, money);
    }

    private void AddProduct(int place, bool open, Constraint? mostProducts)
    {
        var product = model.Products[place];
        used[place] = Switch(open ? 1 : 0);
        mostProducts?.SetCoefficient(used[place], 1);
        bought[place] = product.PackPounds is null ? solver.MakeNumVar(0, double.PositiveInfinity, Next()) : Switch(MostPacks);
        Costs(bought[place], product.PricePerPound * PoundsOf(place));
        bought[place].SetUb(product.MayBeBought ? bought[place].Ub() : 0);
        taken[place] = AtMost(product.LeftPounds);
        taken[place].SetCoefficient(bought[place], -PoundsOf(place));

        // Without a shelf to take it from, what is used at all needs at least one pack: said outright, because it lifts the bound.
        if (product.PackPounds is not null && product.StockPounds <= 0)
        {
            var atLeastOne = AtMost(0);
            atLeastOne.SetCoefficient(used[place], 1);
            atLeastOne.SetCoefficient(bought[place], -1);
        }

        if (product.Freight > 0)
        {
            delivered[place] = Switch();
            Costs(delivered[place]!, product.Freight);
            var most = Math.Max(1, MostEverUsed(product) + product.TakenPounds + PoundsOf(place));
            var byDelivery = AtMost(0);
            byDelivery.SetCoefficient(bought[place], PoundsOf(place));
            byDelivery.SetCoefficient(delivered[place]!, -most);
        }
    }

    private double MostEverUsed(FarmProduct product) =>
        model.Groups.Sum(g => g.Acres * g.Model.Variables.Where(v => v.Offered.Material.Id == product.Offered.Material.Id).Sum(v => v.Most.PoundsPerAcre));

    private void AddGroup(NeedGroup group)
    {
        var variables = group.Model.Variables;
        var amounts = variables.Select(v => solver.MakeNumVar(0, v.Most.PoundsPerAcre, Next())).ToArray();
        var spreads = variables.Select(_ => Switch()).ToArray();
        for (var i = 0; i < variables.Count; i++)
        {
            AddPass(group, i, amounts[i], spreads[i]);
        }

        AddMaterialsOfBed(group, spreads);
        AddNeverTogether(variables, spreads);
        BedRows.Add(solver, objective, group, amounts, model.ExcessBurden, FarmModel.MissedBurden, Next);
        rates.Add(amounts);
        passes.Add(spreads);
    }

    private void AddPass(NeedGroup group, int index, Variable amount, Variable spread)
    {
        var variable = group.Model.Variables[index];
        var place = places[variable.Offered.Material.Id];
        taken[place].SetCoefficient(amount, group.Acres);
        objective.SetCoefficient(amount, model.MassBurden * group.Acres);
        var least = model.Limits.SmallestRate?.PoundsPerAcre ?? 0;
        var most = variable.Most.PoundsPerAcre < least ? 0 : Math.Max(least, UsefulRate.Of(group.Model, variable));
        var onlyWhenSpread = AtMost(0);
        onlyWhenSpread.SetCoefficient(amount, 1);
        onlyWhenSpread.SetCoefficient(spread, -most);
        if (least > 0)
        {
            var enoughWhenSpread = AtMost(0);
            enoughWhenSpread.SetCoefficient(amount, -1);
            enoughWhenSpread.SetCoefficient(spread, least);
        }

        var onlyWhenUsed = AtMost(0);
        onlyWhenUsed.SetCoefficient(spread, 1);
        onlyWhenUsed.SetCoefficient(used[place], -1);
        Costs(spread, (double)(model.Limits.LabourPerPass?.Value ?? 0) * group.Beds.Count);
    }

    private void AddMaterialsOfBed(NeedGroup group, Variable[] spreads)
    {
        if (model.Limits.ProductsPerBed is not { } most)
        {
            return;
        }

        var row = solver.MakeConstraint(0, most, Next());
        foreach (var material in Enumerable.Range(0, spreads.Length).GroupBy(i => group.Model.Variables[i].Offered.Material.Id, StringComparer.Ordinal))
        {
            var passesOf = material.ToList();
            if (passesOf is [var only])
            {
                row.SetCoefficient(spreads[only], 1);
                continue;
            }

            // Several plantings may get one material: it counts once.
            var onBed = Switch();
            row.SetCoefficient(onBed, 1);
            foreach (var i in passesOf)
            {
                var counts = AtMost(0);
                counts.SetCoefficient(spreads[i], 1);
                counts.SetCoefficient(onBed, -1);
            }
        }
    }

    private void AddNeverTogether(IReadOnlyList<MaterialVariable> variables, Variable[] spreads)
    {
        for (var i = 0; i < variables.Count; i++)
        {
            for (var j = i + 1; j < variables.Count; j++)
            {
                if (NeverTogether.Hold(variables[i].Offered.Material, variables[j].Offered.Material))
                {
                    var either = AtMost(1);
                    either.SetCoefficient(spreads[i], 1);
                    either.SetCoefficient(spreads[j], 1);
                }
            }
        }
    }

    private void Hint(FarmSolution start)
    {
        var (variables, values) = (new List<Variable>(), new List<double>());
        void Set(Variable variable, double value)
        {
            variables.Add(variable);
            values.Add(value);
        }

        var usedAtAll = new bool[used.Length];
        for (var g = 0; g < rates.Count; g++)
        {
            for (var i = 0; i < rates[g].Length; i++)
            {
                var rate = start.Rates[g][i];
                Set(rates[g][i], rate);
                Set(passes[g][i], rate > 0 ? 1 : 0);
                usedAtAll[places[model.Groups[g].Model.Variables[i].Offered.Material.Id]] |= rate > 0;
            }
        }

        for (var p = 0; p < used.Length; p++)
        {
            Set(used[p], usedAtAll[p] ? 1 : 0);
            Set(bought[p], start.Bought[p] / PoundsOf(p));
            if (delivered[p] is { } delivery)
            {
                Set(delivery, start.Bought[p] > 0 ? 1 : 0);
            }
        }

        solver.SetHint([.. variables], [.. values]);
    }
}
