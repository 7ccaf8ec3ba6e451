using SoilAdvisor.Agronomy.Acidity.Sulfur;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Http;
using UnitsNet;

namespace SoilAdvisor.Api.Lime;

/// <summary>Writes out how to lower a pH.</summary>
internal static class SulfurWriter
{
    private const string OrganicRule = "elemental-sulfur";

    public static SulfurAnswer? Write(SulfurAdvice? advice, Area? area, string areaBasis, Calculation calculation)
    {
        if (advice is null)
        {
            return null;
        }

        calculation.Assume(advice.Assumptions);
        return new SulfurAnswer(
            advice.Advised,
            advice.Said,
            advice.SoilPh,
            advice.TargetPh,
            advice.Used?.Id,
            [.. advice.Rules.Select(r => new SulfurRuleAnswer(
                r.Id,
                r.Title,
                r.Low is { } low ? RateAnswer.Of(low.Amount, area, areaBasis, calculation.Units) : null,
                r.High is { } high ? RateAnswer.Of(high.Amount, area, areaBasis, calculation.Units) : null,
                r.FromPh,
                r.ToPh,
                r.Said,
                calculation.Cite(r.Source)))],
            [.. advice.Doses.Select(d => new DoseAnswer(
                calculation.Units.PerArea(d.Rate.Amount).Value,
                calculation.Units.PerArea(d.Rate.Amount).Unit,
                d.PerBed is { } mass ? calculation.Units.Of(mass) : null,
                d.MonthsAfterFirst,
                null,
                d.Date is { } day ? Dates.Write(day) : null))],
            advice.FutileBefore is { } futile ? RateAnswer.Of(futile.Amount, area, areaBasis, calculation.Units) : null,
            advice.RetestMonths,
            advice.Retest is { } retest ? Dates.Write(retest) : null,
            calculation.Tables.OrganicRules.TryGetValue(OrganicRule, out var rule) ? new SulfurStatusAnswer(rule.Id, rule.Section, rule.WhatItAsks, calculation.Cite(rule.Source)) : null,
            [.. advice.Cautions, .. advice.Advised && calculation.Tables.Materials.TryGetValue("sulfur-elemental", out var sulfur) ? sulfur.Cautions.Select(c => c.Text) : []],
            calculation.Cite(advice.Source));
    }
}
