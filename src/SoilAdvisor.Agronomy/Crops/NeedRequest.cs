using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Crops;

/// <summary>What the parts of a need calculation share: the question, and the lists that its answer collects.</summary>
internal sealed class NeedRequest(
    SoilTest test,
    Guide guide,
    IReadOnlyDictionary<string, RateTable> rateTables,
    IReadOnlyList<Rating> ratings,
    IReadOnlyList<Planting> plantings)
{
    private readonly List<Assumption> assumptions = [];
    private readonly Dictionary<(string Table, string Crop), IReadOnlyList<RateRow>> rowsOfCrop = [];

    public SoilTest Test => test;

    public Guide Guide => guide;

    public IReadOnlyList<Planting> Plantings => plantings;

    public IReadOnlyCollection<RateTable> RateTables { get; } = [.. rateTables.Values];

    /// <summary>Tables that may be read with the guide's class limits.</summary>
    public IReadOnlyList<RateTable> Paired { get; } = [.. rateTables.Values.Where(t => t.PairWith(guide.Id) is not null)];

    public List<NutrientNeed> Needs { get; } = [];

    public List<NutrientCredit> Credits { get; } = [];

    public List<(string Pointer, Refusal Refusal)> Refused { get; } = [];

    public IReadOnlyList<Assumption> Assumptions => assumptions;

    public Rating? RatingOf(Analyte analyte) => ratings.FirstOrDefault(r => r.Analyte == analyte && r.Guide == guide.Id);

    public void Assume(Assumption assumption)
    {
        if (!assumptions.Contains(assumption))
        {
            assumptions.Add(assumption);
        }
    }

    public void Assume(string code, string text, Citation source) => Assume(new Assumption(code, text, source));

    public void Refuse(string pointer, Refusal refusal) => Refused.Add((pointer, refusal));

    /// <summary>A table's rows for one crop, found once: a bed asks for a dozen nutrients.</summary>
    public IReadOnlyList<RateRow> RowsOf(RateTable table, Crop crop)
    {
        if (!rowsOfCrop.TryGetValue((table.Id, crop.Id), out var rows))
        {
            rows = [.. table.Rates.Where(r => r.Crop == crop.Id)];
            rowsOfCrop.Add((table.Id, crop.Id), rows);
        }

        return rows;
    }

    /// <summary>Whether a table can say anything of a nutrient for a crop.</summary>
    public bool Holds(RateTable table, Crop crop, PlantNutrient nutrient) => table.Kind == RateTableKind.BuildUpAndMaintenance
        ? crop.Removals.Count > 0
        : RowsOf(table, crop).Any(r => r.Nutrient == nutrient);

    public bool Fits(RateRow row) => row.SoilGroups.Count == 0 || (test.SoilGroup is { } soil && row.SoilGroups.Contains(soil));
}
