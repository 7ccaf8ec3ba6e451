using System.Globalization;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Ratings;

/// <summary>
/// An index that a guide computes from several readings and rates in classes of its own. Its value is computed here and read on its own scales
/// only: there is no way to hand it another index's value.
/// </summary>
/// <param name="Id">Kebab-case id inside the guide.</param>
/// <param name="About">The nutrient it speaks of.</param>
/// <param name="Formula">The equation.</param>
/// <param name="Inputs">The readings it takes, one for each symbol.</param>
/// <param name="Scales">Its classes; empty where the guide ties only a regulatory limit to it.</param>
/// <param name="Source">Where the guide gives it.</param>
public sealed record GuideIndex(string Id, Analyte About, IFormula Formula, IReadOnlyList<IndexInput> Inputs, IReadOnlyList<RatingScale> Scales, Citation Source)
{
    // Six decimals: three more than any index is printed with.
    private const int Decimals = 6;

    /// <summary>
    /// True when the report means to be read by this index: it holds the nutrient itself, and one of the other elements where the formula takes others.
    /// </summary>
    /// <param name="test">The soil test.</param>
    public bool IsReported(SoilTest test) =>
        test.Of(About) is not null
        && (Inputs.All(i => i.Analyte == About || i.Analyte == Analyte.Ph) || Inputs.Any(i => i.Analyte != About && i.Analyte != Analyte.Ph && test.Of(i.Analyte) is not null));

    internal Answer<Rating> Rate(Guide guide, SoilTest test, RatingContext context, WorkingSheet? working)
    {
        if (Scales.FirstOrDefault(s => s.AppliesTo(test, context)) is not { } scale)
        {
            return Answer<Rating>.Refused(WhyNotRated.For($"The guide {guide.Id}", Scales, Id, test, context));
        }

        return Value(test, working).TryGet(out var value, out var reason)
            ? RatingCalculation.Rate(guide, scale, test, test.Of(About)!, new ConvertedReading(Amount.Measured(value.Value), 1m, value.Assumptions), working)
            : Answer<Rating>.Refused(reason);
    }

    internal Answer<(decimal Value, IReadOnlyList<Assumption> Assumptions)> Value(SoilTest test, WorkingSheet? working)
    {
        var numbers = new Dictionary<string, double>(StringComparer.Ordinal);
        var origins = new Dictionary<string, Origin>(StringComparer.Ordinal);
        var assumptions = new List<Assumption>();
        foreach (var input in Inputs)
        {
            if (test.Of(input.Analyte) is not { } reading || !IsTaken(input, reading.Method))
            {
                return Missing(input);
            }

            if (!ReadingConversion.To(reading, input.Unit, test.PoundsPerAcreFactor).TryGet(out var converted, out var reason))
            {
                return Answer<(decimal, IReadOnlyList<Assumption>)>.Refused(reason);
            }

            if (converted.Amount.Kind != AmountKind.Measured)
            {
                return Missing(input);
            }

            numbers[input.Symbol] = (double)converted.Amount.Number;
            origins[input.Symbol] = Origin.Given(reading.Where);
            assumptions.AddRange(converted.Assumptions.Where(a => !assumptions.Contains(a)));
        }

        return Formula.Calculate(numbers, working, [.. Formula.Inputs.Select(s => origins[s.Name])])
            .Select(v => (Math.Round((decimal)v, Decimals), (IReadOnlyList<Assumption>)assumptions));
    }

    private static bool IsTaken(IndexInput input, Method method) => input.Analyte == Analyte.Ph ? PhInWater.Is(method) : input.Method.Covers(method);

    private Answer<(decimal, IReadOnlyList<Assumption>)> Missing(IndexInput input) => Answer<(decimal, IReadOnlyList<Assumption>)>.Refused(
        "index-input-missing",
        string.Create(CultureInfo.InvariantCulture, $"{Formula.Title} ({Formula.Shown}) needs {Asked(input)}, measured as a number."),
        $"Give {string.Join(", ", Inputs.Select(Asked))} of the same sample.");

    private static string Asked(IndexInput input) => input.Analyte == Analyte.Ph
        ? "pH in water"
        : $"{Words.Analytes.IdOf(input.Analyte)} by {input.Method} ({Words.Units.IdOf(input.Unit)})";
}
