using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Checks;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Ratings;

/// <summary>Writes out a guide's indices and the limits of law that it prints.</summary>
internal static class IndexWriter
{
    public static IndexAnswer Write(GuideIndex index, Answer<Rating> answer, string pointer, IReadOnlyList<WorkingLine>? working, Calculation calculation)
    {
        var named = new IndexAnswer(index.Id, index.Formula.Title, Words.Analytes.IdOf(index.About), index.Formula.Shown, calculation.Cite(index.Source));
        return answer.TryGet(out var rating, out var reason)
            ? named with
            {
                Value = new Quantity(rating.Amount.Number, Words.Units.IdOf(rating.Scale.Unit)),
                Class = rating.Class.Name,
                Standing = RatingWriter.WordOf(rating.Standing),
                Scale = RatingWriter.Write(rating.Scale, rating),
                Assumptions = rating.Assumptions.Count > 0 ? calculation.Assumptions(rating.Assumptions) : null,
                Working = WorkingWriter.Write(working, calculation.Bibliography),
            }
            : named with { Refused = Fault.Of(pointer, reason) };
    }

    public static CeilingAnswer Write(CeilingFinding finding, Calculation calculation) => new(
        Words.Analytes.IdOf(finding.Ceiling.Analyte),
        finding.Ceiling.Index,
        new Quantity(finding.Ceiling.Limit, Words.Units.IdOf(finding.Ceiling.Unit)),
        FindingAnswer.WordOf(finding.State),
        finding.Ceiling.Jurisdiction,
        finding.Ceiling.WhatItAsks,
        finding.Ceiling.Condition,
        finding.Message,
        finding.Assumptions.Count > 0 ? calculation.Assumptions(finding.Assumptions) : null,
        calculation.Cite(finding.Source));
}
