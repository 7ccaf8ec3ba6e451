using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Climate;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Writes cover crops out.</summary>
internal static class CoverCropWriter
{
    private static readonly Dictionary<WinterFate, string> Fates = new()
    {
        [WinterFate.NoWinter] = "no-winter",
        [WinterFate.DiesOfFrost] = "dies-of-frost",
        [WinterFate.DiesInWinter] = "dies-in-winter",
        [WinterFate.Uncertain] = "uncertain",
        [WinterFate.Lives] = "lives",
    };

    public static CoverCropSelectionAnswer? Write(CoverCropSelection? selection, Calculation calculation) => selection is null
        ? null
        : new CoverCropSelectionAnswer(
            new GapAnswer(Dates.Write(selection.Gap.From), Dates.Write(selection.Gap.To), selection.Gap.Days),
            selection.Aims,
            [.. selection.Weights.All.Select(w => new WeightAnswer(w.Kind, Units.Rounded(w.Weight.Value)))],
            ClimateWriter.Write(selection.Warmth, calculation),
            selection.Termination is { } guidance ? new TerminationAnswer(guidance.Zone, guidance.EndBy is { } day ? Dates.Write(day) : null, guidance.Text, calculation.Cite(guidance.Source)) : null,
            [.. selection.Choices.Select(c => Write(c, calculation))],
            [.. selection.Excluded.Select(e => new CoverCropExclusionAnswer(e.CoverCrop, Write(e.Reasons, calculation)))],
            calculation.Cite(Citation.OurArithmetic));

    private static CoverCropChoiceAnswer Write(CoverCropChoice choice, Calculation calculation) => new(
        choice.CoverCrop.Id,
        choice.CoverCrop.Name,
        Units.Rounded(choice.Score),
        Write(choice.Reasons, calculation),
        Write(choice.Window),
        new PlantBackAnswer(choice.Window.Wait.Days, [.. choice.Window.Wait.Reasons.Select(r => new PlantBackReasonAnswer(r.Cause, r.Text, r.DaysLow, r.DaysHigh, r.Binding, calculation.Cite(r.Source)))]),
        Write(choice.Window.DaysNeeded, calculation),
        choice.Window.DaysToFlower is { } flower ? Write(flower, calculation) : null,
        ClimateWriter.Write(choice.Window.Warmth, calculation),
        choice.SeedRate is { } rate
            ? new SeedAnswer(choice.SeedPerBed is { } seed ? calculation.Units.Of(seed) : null, Write(rate, calculation), calculation.Cite(Citation.OurArithmetic))
            : null,
        Write(choice.DryMatter, calculation),
        Write(choice.Nitrogen, calculation),
        Write(choice.Phosphorus, calculation),
        Write(choice.Numbers, calculation),
        calculation.Cite(Citation.OurArithmetic));

    private static CoverCropDatesAnswer Write(CoverWindow window) => new(
        Dates.Write(window.Sow),
        Dates.Write(window.SowBy),
        Dates.Write(window.Ready),
        window.Flowers is { } flowers ? Dates.Write(flowers) : null,
        Dates.Write(window.KillBy),
        Dates.Write(window.PlantFrom),
        Fates[window.Fate],
        window.DiesAbout is { } dies ? Dates.Write(dies) : null);

    private static CoverCropNumbersAnswer Write(CoverCropNumbers numbers, Calculation calculation) => new(
        Write(numbers.DryMatter, calculation),
        Write(numbers.NitrogenFixed, calculation),
        [.. numbers.Stages.Select(s => Write(s, calculation))],
        Write(numbers.Phosphate, calculation),
        Write(numbers.Potash, calculation),
        numbers.PhosphorusEvidence,
        [.. numbers.Trials.Select(t => new TrialAnswer(t.Subject, t.Says, t.Setting, t.Text, calculation.Cite(t.Source)))]);

    private static StageNitrogenAnswer Write(StageNitrogen stage, Calculation calculation)
    {
        var ratios = new[] { stage.Low.CarbonToNitrogen.Value, stage.High.CarbonToNitrogen.Value };
        return new StageNitrogenAnswer(
            stage.Stage,
            Units.Rounded(stage.PercentLow.Percent),
            Units.Rounded(stage.PercentHigh.Percent),
            Units.Rounded(ratios.Min()),
            Units.Rounded(ratios.Max()),
            calculation.Units.PerArea(stage.Low.Available, stage.High.Available),
            stage.AtLimit,
            stage.Basis,
            calculation.Cite(stage.Source));
    }

    private static RangeAnswer? Write(CoverCropRange? range, Calculation calculation) => range is null
        ? null
        : new RangeAnswer(calculation.Units.PerArea(range.Low).Value, calculation.Units.PerArea(range.High).Value, calculation.Units.PerArea(range.Low).Unit, range.Basis, calculation.Cite(range.Source));

    public static PublishedValue Write(CoverCropValue value, Calculation calculation) =>
        new(value.Property, value.Value, value.Low, value.High, value.Unit, value.Text, value.Note, calculation.Cite(value.Source));

    private static StatementAnswer? Write(Cited<string>? statement, Calculation calculation) =>
        statement is null ? null : new StatementAnswer(statement.Value, calculation.Cite(statement.Source));

    private static IReadOnlyList<CoverCropReasonAnswer> Write(IReadOnlyList<CoverCropReason> reasons, Calculation calculation) =>
        [.. reasons.Select(r => Write(r, calculation))];

    public static CoverCropReasonAnswer Write(CoverCropReason r, Calculation calculation) =>
        new(r.Kind, r.Text, Units.Rounded(r.Grade), Units.Rounded(r.Weight), Units.Rounded(r.Points), calculation.Cite(r.Source));
}
