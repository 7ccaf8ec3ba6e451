using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Planning.Beds;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Planning.FieldWork;

/// <summary>From a plan to what is done with buckets, scale and spreader.</summary>
internal static class FieldWorkPlanning
{
    /// <summary>The field work of a farm; null where nothing is spread.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="beds">The beds as planned.</param>
    /// <param name="chosen">The choice that each was made of, in the same order.</param>
    /// <param name="purchases">What is bought.</param>
    /// <param name="tables">The reference tables.</param>
    public static FieldWorkPlan? Of(FarmRequest request, IReadOnlyList<BedPlan> beds, IReadOnlyList<MaterialPlan> chosen, IReadOnlyList<Purchase> purchases, Tables tables)
    {
        var measuring = new BedMeasuring(request.Measures, FarmShelf.After(purchases, request.Limits.Budget is not null));
        var carried = WorkRounds.Of([.. beds.Zip(chosen).SelectMany(b => measuring.Of(b.First, b.Second))]);
        if (carried.Count == 0)
        {
            return null;
        }

        var working = request.WithWorking ? new WorkingSheet() : null;
        var (batches, apart) = MixingSheet.Of(carried, request.Measures);
        return new FieldWorkPlan(
            request.Measures with { Assumptions = [.. request.Measures.Assumptions, .. carried.Select(c => c.By).Distinct().Count() > 1 ? new[] { WorkRounds.Said } : []] },
            PassOrder.Of(carried),
            batches,
            apart,
            Strips.Of(carried, request.Measures, working),
            CheckChoice.Of(beds, request.Date, tables),
            working?.Lines ?? []);
    }
}
