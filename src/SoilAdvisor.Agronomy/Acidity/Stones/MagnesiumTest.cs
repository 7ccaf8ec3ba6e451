using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Acidity.Stones;

/// <summary>Whether the soil wants magnesium, which decides between dolomitic and calcitic stone. Never a calcium to magnesium ratio.</summary>
/// <param name="WantsMagnesium">True for dolomitic, false for calcitic stone; null when nothing decides.</param>
/// <param name="Said">The test with its cut-off and whose it is, without a full stop.</param>
/// <param name="Source">Where the cut-off stands.</param>
public sealed record MagnesiumTest(bool? WantsMagnesium, string Said, Citation Source)
{
    /// <summary>No test of magnesium decides.</summary>
    public static MagnesiumTest None { get; } = new(null, "Magnesium is not rated, so it does not decide between dolomitic and calcitic stone", Citation.OurJudgement);

    /// <summary>By the cut-off that the farm's own region prints for the choice of stone, else by the magnesium class of the guide.</summary>
    /// <param name="test">The soil test.</param>
    /// <param name="region">ISO 3166-2 code; null when not known.</param>
    /// <param name="cutOffs">Published cut-offs.</param>
    /// <param name="rating">Rating of magnesium by the farm's guide; null when it was not rated.</param>
    public static MagnesiumTest For(SoilTest test, string? region, IReadOnlyList<MagnesiumCutOff> cutOffs, Rating? rating)
    {
        if (cutOffs.FirstOrDefault(c => c.Region == region) is { } cutOff
            && test.Of(Analyte.Mg) is { Amount.Kind: AmountKind.Measured or AmountKind.Below } reading
            && ReadingConversion.To(reading, cutOff.Unit, test.PoundsPerAcreFactor).TryGet(out var converted, out _)
            && (converted.Amount.Kind == AmountKind.Measured || converted.Amount.Number <= cutOff.DolomiticBelow))
        {
            var wants = converted.Amount.Kind == AmountKind.Below || converted.Amount.Number < cutOff.DolomiticBelow;
            var unit = Words.Units.IdOf(cutOff.Unit);
            return new MagnesiumTest(
                wants,
                $"Magnesium {PlainNumber.Of((double)converted.Amount.Number)} {unit} is {(wants ? "below" : "not below")} the {PlainNumber.Of(cutOff.DolomiticBelow)} {unit} of {cutOff.Title}",
                cutOff.Source);
        }

        return rating is null || rating.Standing == Standing.Information
            ? None
            : new MagnesiumTest(
                rating.Standing == Standing.Below,
                $"Magnesium is {(rating.Standing == Standing.Below ? "below" : "at or above")} target ({rating.Class.Name} by {rating.Guide})",
                rating.Source);
    }
}
