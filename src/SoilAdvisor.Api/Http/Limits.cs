namespace SoilAdvisor.Api.Http;

/// <summary>What one request may hold. Read from the section "Limits" of the configuration; the defaults stand here.</summary>
internal sealed record Limits
{
    /// <summary>Bytes of a body.</summary>
    public int BodyBytes { get; init; } = 1_048_576;

    /// <summary>Seconds that one request may take.</summary>
    public double RequestSeconds { get; init; } = 30;

    /// <summary>Letters of an id that the caller chose.</summary>
    public const int IdLetters = 64;

    /// <summary>Letters of any other text.</summary>
    public const int TextLetters = 200;

    /// <summary>Beds of a plan.</summary>
    public const int Beds = 500;

    /// <summary>Soil tests of a plan or rows of a lab file.</summary>
    public const int SoilTests = 200;

    /// <summary>Readings of one soil test.</summary>
    public const int Readings = 40;

    /// <summary>Guides named to be read beside the chosen one.</summary>
    public const int GuidesBeside = 20;

    /// <summary>Conversions to another method named for one soil test.</summary>
    public const int Conversions = 10;

    /// <summary>Materials of a plan.</summary>
    public const int Materials = 100;

    /// <summary>Crops, former stands or earlier applications of one bed.</summary>
    public const int PerBed = 12;

    /// <summary>Beds compared for composites; every pair is looked at.</summary>
    public const int SampledBeds = 60;

    /// <summary>Numbers that a formula is worked for when one symbol is varied.</summary>
    public const int Variations = 50;

    /// <summary>Levels of nesting in a JSON body.</summary>
    public const int Depth = 16;

    public TimeSpan RequestTime => TimeSpan.FromSeconds(RequestSeconds);
}
