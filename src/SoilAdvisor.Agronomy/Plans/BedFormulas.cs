using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>Equations between a bed, its ground, and an acre. An acre is 43,560 square feet of whatever ground is spread.</summary>
public static class BedFormulas
{
    /// <summary>Area of the bed top: A = L × W.</summary>
    public static Formula<(Length Length, Length Across), Area> BedTopArea { get; } = new(
        "bed-top-area",
        "Area of the bed top",
        "A = L × W",
        Citation.OurArithmetic,
        [
            new(new Symbol("L", "length of the bed", "ft", 0), x => x.Length.Feet),
            new(new Symbol("W", "width of the bed top", "ft", 0), x => x.Across.Feet),
        ],
        new(new Symbol("A", "area of the bed top", "sq ft"), y => y.SquareFeet),
        v => (Length.FromFeet(v[0]), Length.FromFeet(v[1])),
        x => Area.FromSquareFeet(x.Length.Feet * x.Across.Feet),
        "Plain geometry.");

    /// <summary>Area of a bed with its share of path: A = L × C.</summary>
    public static Formula<(Length Length, Length Across), Area> BedAndPathArea { get; } = new(
        "bed-and-path-area",
        "Area of a bed with its path",
        "A = L × C",
        Citation.OurArithmetic,
        [
            new(new Symbol("L", "length of the bed", "ft", 0), x => x.Length.Feet),
            new(new Symbol("C", "centre spacing, from bed centre to bed centre", "ft", 0), x => x.Across.Feet),
        ],
        new(new Symbol("A", "area of bed and path", "sq ft"), y => y.SquareFeet),
        v => (Length.FromFeet(v[0]), Length.FromFeet(v[1])),
        x => Area.FromSquareFeet(x.Length.Feet * x.Across.Feet),
        "Plain geometry.");

    /// <summary>What a rate on bed tops amounts to on a broadcast acre of beds and paths: R = r × W / C.</summary>
    public static Formula<(MassPerArea Rate, Length Width, Length CenterSpacing), MassPerArea> OnBroadcastAcre { get; } = new(
        "bed-top-rate-on-broadcast-acre",
        "A rate on bed tops, counted on an acre of beds and paths",
        "R = r × W / C",
        Citation.OurArithmetic,
        [
            new(new Symbol("r", "rate on the bed top", "lb/acre", 0), x => x.Rate.PoundsPerAcre),
            new(new Symbol("W", "width of the bed top", "ft", 0), x => x.Width.Feet),
            new(new Symbol("C", "centre spacing, from bed centre to bed centre", "ft", 0), x => x.CenterSpacing.Feet),
        ],
        new(new Symbol("R", "rate on an acre of beds and paths", "lb/acre"), y => y.PoundsPerAcre),
        v => (MassPerArea.FromPoundsPerAcre(v[0]), Length.FromFeet(v[1]), Length.FromFeet(v[2])),
        x => x.Rate * (x.Width.Feet / x.CenterSpacing.Feet),
        "Proportion of ground; no publication that was read works it as an example.");
}
