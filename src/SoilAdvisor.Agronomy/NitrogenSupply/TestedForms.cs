using SoilAdvisor.Agronomy.Materials;

namespace SoilAdvisor.Agronomy.NitrogenSupply;

/// <summary>Gives a laboratory's forms of nitrogen the published factors that they are read with.</summary>
public static class TestedForms
{
    /// <summary>The analysis with its factors; unchanged where ammonium was not tested or no publication has the material's class.</summary>
    /// <param name="tested">What the laboratory says; null for nothing.</param>
    /// <param name="material">The material.</param>
    /// <param name="tables">The tables.</param>
    /// <param name="region">ISO 3166-2 code of the farm; null when not said.</param>
    /// <param name="how">How it reaches the soil.</param>
    /// <param name="daysToWorkingIn">Days from spreading to working in.</param>
    public static GrowerAnalysis? WithFactors(GrowerAnalysis? tested, Material material, NitrogenTables tables, string? region, SpreadingWay how, int daysToWorkingIn)
    {
        if (tested is not { Ammonium: not null })
        {
            return tested;
        }

        var moisture = tested.Moisture ?? (material.ValueOf("moisture") is { } row ? row.Value ?? row.High ?? row.Low : null);
        return NitrogenFactorChoice.For(tables, material.Id, 100 - moisture, region, how, daysToWorkingIn).TryGet(out var factors, out _)
            ? tested with { Factors = factors }
            : tested;
    }

    /// <summary>How something was worked in that was spread on one day and worked in on another.</summary>
    /// <param name="spread">Day of spreading.</param>
    /// <param name="workedIn">Day of working in; null when it was not, or nobody said.</param>
    public static (SpreadingWay How, int Days) Worked(DateOnly spread, DateOnly? workedIn) => workedIn is { } day
        ? (SpreadingWay.Incorporated, day.DayNumber - spread.DayNumber)
        : (SpreadingWay.NotIncorporated, 0);
}
