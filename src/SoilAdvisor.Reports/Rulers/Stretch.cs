namespace SoilAdvisor.Reports.Rulers;

/// <summary>One class on a ruler: its limits, its place from 0 to 1, its printed name (empty for a gap), and whether the result is in it.</summary>
internal sealed record Stretch(double Lower, double Upper, double Start, double End, string Name, bool IsFound)
{
    /// <summary>Places of the small marks between its limits, at round steps.</summary>
    public IEnumerable<double> SmallMarks
    {
        get
        {
            var step = RoundStep((Upper - Lower) / 5);
            for (var k = Math.Floor(Lower / step) + 1; k * step < Upper - (step * 0.2); k++)
            {
                if (k * step > Lower + (step * 0.2))
                {
                    yield return Start + (((k * step) - Lower) / (Upper - Lower) * (End - Start));
                }
            }
        }
    }

    private static double RoundStep(double least)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return (least / power) switch { <= 1 => power, <= 2 => 2 * power, <= 5 => 5 * power, _ => 10 * power };
    }
}
