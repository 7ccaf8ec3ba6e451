using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>Every published change of a soil test that is held, and the way to the one that belongs to a test.</summary>
/// <param name="Changes">The rows, in the order of the table.</param>
public sealed record TestMovements(IReadOnlyList<PublishedMovement> Changes)
{
    /// <summary>Total phosphate that moves a phosphorus test by 1 mg/kg.</summary>
    /// <param name="extractant">Extractant of the test.</param>
    /// <param name="region">ISO 3166-2 code; null when not said.</param>
    /// <returns>The pounds with their band, or a refusal: movement-not-held.</returns>
    public Answer<TestMovement<TotalP2O5>> OfPhosphorus(Extractant extractant, string? region) =>
        Row(PlantNutrient.P2O5, extractant, region).Select(row => Made<TotalP2O5>(row, region, new Coefficient((double)row.Value!.Value), 1, []));

    /// <summary>Potash that moves a potassium test by 1 mg/kg.</summary>
    /// <param name="extractant">Extractant of the test.</param>
    /// <param name="region">ISO 3166-2 code; null when not said.</param>
    /// <param name="cec">Exchange capacity; null when not known: then the printed ends make a wider band, and that is said.</param>
    /// <param name="working">Receives the arithmetic; null for none.</param>
    /// <returns>The pounds with their band, or a refusal: movement-not-held, cec-needed.</returns>
    public Answer<TestMovement<K2O>> OfPotassium(Extractant extractant, string? region, ExchangeCapacity? cec, WorkingSheet? working = null) =>
        Row(PlantNutrient.K2O, extractant, region).Then(row => Potash(row, region, cec, working));

    /// <summary>Share by which a phosphorus test falls in a year of cropping without phosphorus; null where none is held.</summary>
    public PublishedMovement? Drawdown => Changes.FirstOrDefault(c => c is { Use: MovementUse.Drawdown, Nutrient: PlantNutrient.P2O5 });

    /// <summary>A row by its id; null where the table has none.</summary>
    /// <param name="id">Its id.</param>
    public PublishedMovement? ById(string id) => Changes.FirstOrDefault(c => c.Id == id);

    private Answer<PublishedMovement> Row(PlantNutrient nutrient, Extractant extractant, string? region)
    {
        var rows = Changes.Where(c => c.Use == MovementUse.Projection && c.Nutrient == nutrient && c.Extractant == extractant).ToList();
        var row = rows.Find(r => region is not null && r.Regions.Contains(region)) ?? rows.FirstOrDefault();
        return row is not null
            ? Answer<PublishedMovement>.Given(row)
            : Answer<PublishedMovement>.Refused(
                "movement-not-held",
                $"No published figure says how many pounds of {nutrient} move a test by {Words.Extractants.IdOf(extractant)}, and a figure of another extractant does not hold for it.",
                "Test again by the same laboratory, in the same season and to the same depth: two tests some years apart show how this soil moves.");
    }

    private static Answer<TestMovement<K2O>> Potash(PublishedMovement row, string? region, ExchangeCapacity? cec, WorkingSheet? working)
    {
        var atZero = new Coefficient((double)row.Value!.Value);
        if (row.PerCec is not { } rise)
        {
            return Answer<TestMovement<K2O>>.Given(Made<K2O>(row, region, atZero, 1, []));
        }

        if (cec is { } capacity)
        {
            var from = Origin.From(row.Source);
            return Answer<TestMovement<K2O>>.Given(Made<K2O>(
                row, region, YearsAheadFormulas.PotashForOneUnit.Of((atZero, new Coefficient((double)rise), capacity), working, from, from, Origin.Given("cation exchange capacity of the test")), 1, []));
        }

        if (row is not { Low: > 0 and { } low, High: { } high })
        {
            return Answer<TestMovement<K2O>>.Refused(
                "cec-needed",
                "The potash that moves the test rises with the cation exchange capacity, which the soil test does not give.",
                "Ask the laboratory for the cation exchange capacity (cec, meq/100g).");
        }

        var (middle, width) = (Math.Sqrt((double)(low * high)), Math.Sqrt((double)(high / low)));
        return Answer<TestMovement<K2O>>.Given(Made<K2O>(row, region, new Coefficient(middle), width,
        [
            new Assumption(
                "movement-without-cec",
                $"The exchange capacity of the soil is not known: {PlainNumber.Of(low)} to {PlainNumber.Of(high)} lb/acre of K2O are taken to move the test by 1 mg/kg. The exchange capacity would narrow the band.",
                row.Source),
        ]));
    }

    private static TestMovement<TForm> Made<TForm>(PublishedMovement row, string? region, Coefficient pounds, double wider, IReadOnlyList<Assumption> more)
        where TForm : IBalancedForm
    {
        var band = new Coefficient((double)(row.BandFactor ?? 1) * wider);
        return new TestMovement<TForm>(row.Extractant!.Value, pounds, band, row.Source, [Said(row, region, pounds, band), .. more]);
    }

    private static Assumption Said(PublishedMovement row, string? region, Coefficient pounds, Coefficient band)
    {
        var (own, printed) = (Words.Extractants.IdOf(row.Extractant!.Value), row.PrintedFor is { } of ? Words.Extractants.IdOf(of) : null);
        var carried = printed is not null && printed != own ? $" The figure was printed for {printed} and is carried over to {own} by us, with a wider band." : "";
        var elsewhere = row.Regions.Count > 0 && (region is null || !row.Regions.Contains(region)) ? $" It was printed for {string.Join(", ", row.Regions)}." : "";
        return new Assumption(
            "pounds-for-one-unit",
            $"About {PlainNumber.Of(pounds.Value)} lb/acre of {row.Nutrient} are taken to move a test by {own} by 1 mg/kg; on four soils in five between {PlainNumber.Of(pounds.Value / band.Value)} and {PlainNumber.Of(pounds.Value * band.Value)}, which is our band.{carried}{elsewhere} How a soil answers is uncertain: test again.",
            row.Source);
    }
}
