namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>When in the crop's life a sample was taken, where a test means nothing without it.</summary>
public enum SampleTiming
{
    /// <summary>In the growing crop, just before nitrogen would be sidedressed: the pre-sidedress nitrate test.</summary>
    BeforeSidedressing,
}
