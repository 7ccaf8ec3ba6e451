using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.CoverCrops;

/// <summary>Writes cover crops out.</summary>
internal static class CoverCropWriter
{
    public static CoverCropSelectionAnswer? Write(CoverCropSelection? selection, Calculation calculation) => selection is null
        ? null
        : new CoverCropSelectionAnswer(
            new GapAnswer(Dates.Write(selection.Gap.From), Dates.Write(selection.Gap.To), selection.Gap.Days),
            [.. selection.Choices.Select(c => Write(c, calculation))],
            [.. selection.Excluded.Select(e => new CoverCropExclusionAnswer(e.CoverCrop, Write(e.Reasons, calculation)))],
            calculation.Cite(Citation.OurArithmetic));

    private static CoverCropChoiceAnswer Write(CoverCropChoice choice, Calculation calculation) => new(
        choice.CoverCrop.Id,
        choice.CoverCrop.Name,
        Units.Rounded(choice.Score),
        Write(choice.Reasons, calculation),
        new CoverCropDatesAnswer(Dates.Write(choice.Sow), Dates.Write(choice.KillBy)),
        Write(choice.DaysNeeded, calculation),
        choice.SeedRate is { } rate
            ? new SeedAnswer(choice.SeedPerBed is { } seed ? calculation.Units.Of(seed) : null, Write(rate, calculation), calculation.Cite(Citation.OurArithmetic))
            : null,
        Write(choice.DryMatter, calculation),
        Write(choice.Nitrogen, calculation),
        Write(choice.Phosphorus, calculation),
        calculation.Cite(Citation.OurArithmetic));

    private static PublishedValue Write(CoverCropValue value, Calculation calculation) =>
        new(value.Property, value.Value, value.Low, value.High, value.Unit, value.Text, value.Note, calculation.Cite(value.Source));

    private static StatementAnswer? Write(Cited<string>? statement, Calculation calculation) =>
        statement is null ? null : new StatementAnswer(statement.Value, calculation.Cite(statement.Source));

    private static IReadOnlyList<CoverCropReasonAnswer> Write(IReadOnlyList<CoverCropReason> reasons, Calculation calculation) =>
        [.. reasons.Select(r => new CoverCropReasonAnswer(r.Text, Units.Rounded(r.Points), calculation.Cite(r.Source)))];
}
