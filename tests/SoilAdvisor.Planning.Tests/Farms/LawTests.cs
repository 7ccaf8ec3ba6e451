using CsCheck;
using SoilAdvisor.Agronomy.Plans;
using UnitsNet;

namespace SoilAdvisor.Planning.Tests.Farms;

public class LawTests
{
    private static readonly string[] Crops = ["broccoli", "spinach", "tomato", "carrot", "lettuce", "potato"];

    private static readonly string[] Materials =
        ["feather-meal", "blood-meal", "soybean-meal", "bone-meal-steamed", "potassium-sulfate", "langbeinite", "dairy-composted", "poultry-composted", "gypsum", "wood-ash", "calcitic-lime", "dolomitic-lime", "rock-phosphate-soft"];

    private static readonly Gen<Bed> AnyBed =
        from p in Gen.Int[1, 300]
        from k in Gen.Int[10, 500]
        from ph in Gen.Int[50, 78]
        from buffer in Gen.Int[58, 66]
        from first in Gen.Int[0, Crops.Length - 1].Select(i => Crops[i])
        from second in Gen.Int[0, Crops.Length - 1].Select(i => Crops[i])
        from two in Gen.Bool
        from feet in Gen.Int[20, 4000]
        select Farm.Bed("b", Farm.Test(p, k, ph / 10m, buffer / 10m), two ? [first, second] : [first]) with { Area = Area.FromSquareFeet(feet) };

    private static readonly Gen<MaterialOffer[]> AnyShelf =
        from listed in Gen.Bool.Array[Materials.Length]
        from priced in Gen.Bool
        from cents in Gen.Int[1, 200].Array[Materials.Length]
        select Materials.Select((m, i) => (m, i)).Where(x => listed[x.i]).Select(x => Farm.Offer(x.m, priced ? cents[x.i] / 100m : null)).ToArray();

    [Fact]
    public void No_plan_exceeds_a_ceiling() => Gen.Select(AnyBed, AnyShelf).Sample(
        (bed, shelf) => Assert.All(
            Farm.PlanOne(bed, shelf).Balances,
            b => Assert.True(b.Ceiling is not { } ceiling || b.Supplied.PoundsPerAcre <= (ceiling.PoundsPerAcre * (1 + 1e-9)) + 1e-9, b.ToString())),
        iter: 60,
        threads: 1);

    [Fact]
    public void Twice_the_bed_takes_twice_the_amounts() => Gen.Select(AnyBed, AnyShelf).Sample(
        (bed, shelf) =>
        {
            var (one, two) = (Farm.PlanOne(bed, shelf), Farm.PlanOne(bed with { Area = bed.Area * 2 }, shelf));
            Assert.Equal(one.Applications.Select(a => a.Rate), two.Applications.Select(a => a.Rate));
            Assert.All(one.Applications.Zip(two.Applications), p => Assert.Equal(2 * p.First.PerBed.Kilograms, p.Second.PerBed.Kilograms, 1e-9 * p.Second.PerBed.Kilograms));
            Assert.Equal(2 * (one.Lime?.Chosen?.PerBed?.Kilograms ?? 0), two.Lime?.Chosen?.PerBed?.Kilograms ?? 0, 1e-6);
        },
        iter: 40,
        threads: 1);

    [Fact]
    public void With_and_without_working_the_numbers_are_the_same_bits() => Gen.Select(AnyBed, AnyShelf).Sample(
        (bed, shelf) =>
        {
            var request = Farm.Request([bed], shelf);
            var (silent, shown) = (Farm.Plan(request).Beds[0], Farm.Plan(request with { WithWorking = true }).Beds[0]);
            Assert.Empty(silent.Working);
            Assert.NotEmpty(shown.Working);
            Assert.Equal(Numbers(silent), Numbers(shown));
        },
        iter: 40,
        threads: 1);

    [Fact]
    public void The_order_of_beds_changes_nothing_in_any_bed() => Gen.Select(AnyBed.Array[3], AnyShelf).Sample(
        (beds, shelf) =>
        {
            var named = beds.Select((b, i) => b with { Id = $"{i}", SoilTest = b.SoilTest with { Id = $"s{i}" } }).ToArray();
            var (forth, back) = (Farm.Plan(Farm.Request(named, shelf)), Farm.Plan(Farm.Request([.. named.Reverse()], shelf)));
            Assert.Equal(forth.Beds.SelectMany(Numbers), back.Beds.Reverse().SelectMany(Numbers));
            Assert.Equal(forth.Guide.Id, back.Guide.Id);
            Assert.Equal(forth.Purchases.Select(p => p.Offered.Material.Id), back.Purchases.Select(p => p.Offered.Material.Id));
            Assert.All(forth.Purchases.Zip(back.Purchases), p => Assert.Equal(p.First.Needed.Kilograms, p.Second.Needed.Kilograms, 1e-9 * (1 + p.First.Needed.Kilograms)));
        },
        iter: 20,
        threads: 1);

    [Fact]
    public void The_same_request_gives_the_same_plan() => Gen.Select(AnyBed, AnyShelf).Sample(
        (bed, shelf) => Assert.Equal(Numbers(Farm.PlanOne(bed, shelf)), Numbers(Farm.PlanOne(bed, shelf))),
        iter: 20,
        threads: 1);

    private static IEnumerable<string> Numbers(BedPlan plan) =>
    [
        plan.Summary,
        .. plan.Applications.Select(a => FormattableString.Invariant($"{a.Offered.Material.Id} {a.PlantingIndex} {a.Rate.PoundsPerAcre:R} {a.PerBed.Kilograms:R} {a.Cost?.Value}")),
        .. plan.Balances.Select(b => FormattableString.Invariant($"{b.Nutrient} {b.Floor?.PoundsPerAcre:R} {b.Ceiling?.PoundsPerAcre:R} {b.Supplied.PoundsPerAcre:R} {b.SuppliedHigh.PoundsPerAcre:R}")),
        .. plan.Shortfalls.Select(s => FormattableString.Invariant($"{s.Nutrient} {s.By.PoundsPerAcre:R} {s.WhatWouldMeetIt}")),
        FormattableString.Invariant($"{plan.Lime?.Chosen?.Offered.Material.Id} {plan.Lime?.Chosen?.Rate.PoundsPerAcre:R} {plan.Cost?.Value}"),
    ];
}
