using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>What a farm measures out and spreads with.</summary>
/// <param name="Bucket">Volume of the bucket, level full; above zero. Read to its half.</param>
/// <param name="Scoop">Volume of the scoop, level full; above zero, read to its quarter; null for none.</param>
/// <param name="ScaleMark">Smallest step of the scale; above zero; null takes our usual marks by weight.</param>
/// <param name="StripLength">Length of the strip that a spreader or a hand is tried on; above zero.</param>
/// <param name="SwathWidth">Width that one pass of the spreader or hand covers; above zero.</param>
/// <param name="Assumptions">What nobody stated of these.</param>
public sealed record FieldMeasures(Volume Bucket, Volume? Scoop, Mass? ScaleMark, Length StripLength, Length SwathWidth, IReadOnlyList<Assumption> Assumptions)
{
    private static readonly Volume UsualBucket = Volume.FromUsGallons(5);
    private static readonly Length UsualStrip = Length.FromFeet(50);
    private static readonly Length UsualSwath = Length.FromFeet(4);

    /// <summary>Measures as stated; what is left out is taken as usual, and said.</summary>
    /// <param name="bucket">Bucket; null takes 5 US gallons.</param>
    /// <param name="scoop">Scoop; null for none.</param>
    /// <param name="scaleMark">Step of the scale; null takes usual marks.</param>
    /// <param name="stripLength">Strip; null takes 50 ft.</param>
    /// <param name="swathWidth">Swath; null takes 4 ft.</param>
    public static FieldMeasures Of(Volume? bucket, Volume? scoop, Mass? scaleMark, Length? stripLength, Length? swathWidth)
    {
        var assumptions = new List<Assumption>();
        Say(bucket is null, "usual-bucket", "A bucket is taken to hold 5 US gallons, level full, and is read to its half.");
        Say(scoop is null, "no-scoop", "No scoop was named: what is too little for half buckets is weighed.");
        Say(scaleMark is null, "usual-scale", "The scale is read to 0.1 oz below 1 lb, 1 oz below 10 lb, 4 oz below 100 lb and 1 lb above.");
        Say(stripLength is null || swathWidth is null, "usual-strip", "Spreading is tried on a strip of 50 ft by a swath of 4 ft where no other is named.");
        return new FieldMeasures(bucket ?? UsualBucket, scoop, scaleMark, stripLength ?? UsualStrip, swathWidth ?? UsualSwath, assumptions);

        void Say(bool unsaid, string code, string text)
        {
            if (unsaid)
            {
                assumptions.Add(new Assumption(code, text, Citation.OurJudgement));
            }
        }
    }

    /// <summary>The step that a weight is read to.</summary>
    /// <param name="mass">The weight.</param>
    public Mass MarkFor(Mass mass) => ScaleMark ?? mass.Pounds switch
    {
        < 1 => Mass.FromOunces(0.1),
        < 10 => Mass.FromOunces(1),
        < 100 => Mass.FromOunces(4),
        _ => Mass.FromPounds(1),
    };
}
