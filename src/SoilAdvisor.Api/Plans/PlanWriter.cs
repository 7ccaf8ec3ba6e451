using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Plans;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Beds;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Cations;
using SoilAdvisor.Api.Checks;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.FieldWork;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.Lime;
using SoilAdvisor.Api.NitrogenSupply;
using SoilAdvisor.Api.Materials;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;
using SoilAdvisor.Api.YearsAhead;

namespace SoilAdvisor.Api.Plans;

/// <summary>Writes a plan out. Numbers stand beside the source they come from; sums are our arithmetic.</summary>
internal static class PlanWriter
{
    /// <summary>The answer; beds that could not be read keep their place.</summary>
    public static PlanAnswer Write(FarmPlan plan, PlanRequest request, PlanRead read, Calculation calculation)
    {
        calculation.Assume(plan.Assumptions);
        var faults = calculation.Faults;
        var beds = new BedAnswer[Math.Min(request.Beds!.Count, Limits.Beds)];
        for (var i = 0; i < plan.Beds.Count; i++)
        {
            beds[read.BedIndexes[i]] = Write(plan.Beds[i], read.Tests[plan.Beds[i].Bed.SoilTest.Id].Pointer, PointerPath.Down("/beds", read.BedIndexes[i]), Refusals(plan.Beds[i], read.BedIndexes[i], read, calculation), calculation);
        }

        for (var i = 0; i < beds.Length; i++)
        {
            beds[i] ??= Unread(request.Beds[i].Id, PointerPath.Down("/beds", i), calculation);
        }

        return new PlanAnswer(
            plan.Farm,
            Dates.Write(plan.Date),
            GuideNamed.Of(plan.Guide, calculation),
            plan.GuideReason,
            plan.OtherGuides,
            plan.RateTable?.Id,
            plan.Objective,
            SuspicionWriter.Of(read.Tests.Values.Select(t => t.Test).OfType<SoilTest>(), calculation),
            beds,
            [.. plan.Purchases.Select(p => new PurchaseAnswer(
                p.Offered.Material.Id, p.Offered.Material.Name, calculation.Units.Of(p.Needed), p.OnHand is { } stock ? calculation.Units.Of(stock) : null,
                calculation.Units.Of(p.ToBuy), p.Packs, p.Offered.Pack is { } pack ? calculation.Units.Of(pack) : null, MoneyAnswer.Of(p.Cost), MoneyAnswer.Of(p.Freight),
                calculation.Cite(Citation.OurArithmetic)))],
            [.. plan.Findings.Select(f => FindingAnswer.Of(f, calculation))],
            plan.Warnings,
            new TotalsAnswer(plan.Partial || plan.Beds.Count < beds.Length, MoneyAnswer.Of(plan.Cost), calculation.Cite(Citation.OurArithmetic)),
            Write(plan.Choice, calculation),
            FieldWorkWriter.Write(plan.FieldWork, plan, calculation),
            MaterialPriceWriter.Write(plan.MaterialPrices, calculation),
            plan.MaterialTests.Count == 0 ? null : [.. plan.MaterialTests.Select(t => new MaterialTestAnswer(t.Material.Id, t.Subject, t.Found, t.Text, t.Forbids, calculation.Cite(t.Source)))],
            SeasonWriter.Write(plan.CoverSeason, calculation),
            faults.Count > 0 ? faults.All : null,
            calculation.Assumptions(),
            calculation.Bibliography.List(),
            calculation.Versions());
    }

    /// <summary>The refusals of one bed at their places in the request; each is also noted once for the whole answer.</summary>
    public static IReadOnlyList<Fault> Refusals(BedPlan plan, int index, PlanRead read, Calculation calculation)
    {
        var refusals = new List<Fault>();
        foreach (var (pointer, refusal) in plan.Refused)
        {
            var fault = Place(pointer, refusal, plan.Bed, index, read, calculation);
            refusals.Add(fault);
            if (!calculation.Faults.All.Contains(fault))
            {
                calculation.Faults.Add(fault);
            }
        }

        return refusals;
    }

    private static Fault Place(string pointer, Refusal refusal, Bed bed, int index, PlanRead read, Calculation calculation)
    {
        const string Readings = "/soilTest/readings/";
        if (pointer.StartsWith(Readings, StringComparison.Ordinal) && int.TryParse(pointer[Readings.Length..], NumberStyles.None, CultureInfo.InvariantCulture, out var i))
        {
            var reading = bed.SoilTest.Readings[i];
            return Fault.Of(reading.Where, GuideCoverage.Offer(refusal, reading, calculation.Tables));
        }

        return pointer.StartsWith("/soilTest", StringComparison.Ordinal)
            ? Fault.Of(read.Tests[bed.SoilTest.Id].Pointer + pointer["/soilTest".Length..], refusal)
            : Fault.Of(PointerPath.Down("/beds", index) + pointer, refusal);
    }

    private static BedAnswer Unread(string? id, string pointer, Calculation calculation) =>
        new(id ?? "", "refused", "This bed was not planned; the reasons stand under refused.", calculation.Cite(Citation.OurArithmetic))
        {
            Refused = [.. calculation.Faults.All.Where(f => PointerPath.IsWithin(f.Pointer, pointer))],
        };

    private static BedAnswer Write(BedPlan plan, string testPointer, string bedPointer, IReadOnlyList<Fault> refusals, Calculation calculation)
    {
        var (bed, units) = (plan.Bed, calculation.Units);
        var basis = BedReader.WordOf(bed.Spread);
        return new BedAnswer(bed.Id, WordOf(plan.State), plan.Summary, calculation.Cite(Citation.OurArithmetic))
        {
            SoilTest = bed.SoilTest.Id,
            Crops = [.. bed.Plantings.Select(p => p.Crop.Id)],
            Area = units.Of(bed.Area),
            AreaBasis = basis,
            AreaShown = bed.AreaShown,
            Ratings = [.. plan.Ratings.Select(r => RatingWriter.Write(r, plan.Certainties.TryGetValue(r, out var certainty) ? certainty : null, null, calculation))],
            Indices = plan.Indices.Count > 0
                ? [.. plan.Indices.Select(i => IndexWriter.Write(i.Index, i.Answer, bed.SoilTest.Of(i.Index.About)!.Where, null, calculation))]
                : null,
            Ceilings = plan.Ceilings.Count > 0 ? [.. plan.Ceilings.Select(c => IndexWriter.Write(c, calculation))] : null,
            Cations = CationsWriter.Write(plan.Cations, testPointer, null, calculation),
            Need = [.. plan.Need.Needs.Select(n => Write(n, calculation))],
            Credits = [.. plan.Need.Credits.Select(c => new CreditAnswer(c.Nutrient.ToString(), c.From, units.PerArea(c.Low, c.High), c.Timing, calculation.Cite(c.Source)))],
            Lime = LimeWriter.Write(plan.Lime, bed.Area, basis, calculation),
            Materials = [.. plan.Applications.Select(a => ApplicationWriter.Write(a, bed, calculation))],
            NitrogenInTime = NitrogenWriter.Write(plan.NitrogenInTime, bed, calculation),
            Supplied = [.. plan.Balances.Select(b => Write(b, calculation))],
            Shortfalls = [.. plan.Shortfalls.Select(s => new ShortfallAnswer(
                s.Nutrient.Symbol(), s.PlantingIndex, units.PerArea(s.By), s.IsCeiling ? "ceiling" : "floor", s.WhatWouldMeetIt, calculation.Cite(Citation.OurArithmetic)))],
            YearsAhead = YearsAheadWriter.Write(plan.YearsAhead, bedPointer, calculation),
            StructureDressing = YearsAheadWriter.Write(plan.StructureDressing, bed, bedPointer, calculation),
            CoverCrops = CoverCropWriter.Write(plan.CoverCrops, calculation),
            Findings = [.. plan.Findings.Select(f => FindingAnswer.Of(f, calculation))],
            Cautions = [.. plan.Cautions.Select(c => new CautionEntry(c.Id, c.Text, calculation.Cite(c.Source)))],
            Warnings = plan.Warnings,
            Cost = MoneyAnswer.Of(plan.Cost),
            Refused = refusals.Count > 0 ? refusals : null,
            Assumptions = calculation.Assumptions(plan.Assumptions),
            Working = calculation.Asked.Working ? WorkingWriter.Write(plan.Working, calculation.Bibliography) : null,
        };
    }

    private static ChoiceAnswer Write(FarmChoice choice, Calculation calculation) => new(
        choice.DifferentNeeds, choice.Products, choice.Passes, Units.Rounded(choice.Gap * 100), choice.Ended,
        MoneyAnswer.Of(choice.Bought), MoneyAnswer.Of(choice.Freight), MoneyAnswer.Of(choice.Labour), MoneyAnswer.Of(choice.ToPay), calculation.Cite(Citation.OurArithmetic));

    private static NeedAnswer Write(NutrientNeed need, Calculation calculation) => new(
        need.Nutrient.ToString(),
        need.PlantingIndex,
        need.Crop,
        calculation.Units.PerArea(need.Rate.Low, need.Rate.High),
        need.Class,
        need.Standing is { } standing ? RatingWriter.WordOf(standing) : null,
        need.RateTable,
        need.Guide,
        need.Removal is { } removal ? calculation.Units.PerArea(removal) : null,
        [.. need.Splits.Select(s => new SplitAnswer(s.Order, s.Rate is { } rate ? calculation.Units.PerArea(rate.Low, rate.High) : null, s.When, calculation.Cite(s.Source)))],
        need.Condition,
        need.Alternatives,
        calculation.Cite(need.Source));

    private static BalanceAnswer Write(NutrientBalance balance, Calculation calculation) => new(
        balance.Nutrient.Symbol(),
        balance.Floor is { } floor ? calculation.Units.PerArea(floor) : null,
        balance.Ceiling is { } ceiling ? calculation.Units.PerArea(ceiling) : null,
        balance.CeilingReason,
        calculation.Units.PerArea(balance.Supplied),
        calculation.Units.PerArea(balance.SuppliedHigh),
        calculation.Cite(Citation.OurArithmetic));

    private static string WordOf(BedState state) => state switch
    {
        BedState.Planned => "planned",
        BedState.Partly => "partly",
        _ => "refused",
    };
}
