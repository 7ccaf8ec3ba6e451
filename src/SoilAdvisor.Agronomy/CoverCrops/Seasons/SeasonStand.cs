using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Working;
using UnitsNet;

namespace SoilAdvisor.Agronomy.CoverCrops.Seasons;

/// <summary>What one bed grows in one gap.</summary>
/// <param name="Gap">The bed and its gap.</param>
/// <param name="Choice">The cover crop; null when the bed stays bare.</param>
/// <param name="Said">What was traded for the whole farm, or why the bed stays bare; null when it simply is the best.</param>
public sealed record SeasonStand(SeasonGap Gap, CoverCropChoice? Choice, Cited<string>? Said)
{
    /// <summary>Seed for the bed; null when it stays bare or no rate is held.</summary>
    public Mass? Seed => Choice?.SeedPerBed;

    /// <summary>What is to be done and when, in order; empty for a bare bed but for the next planting.</summary>
    public IReadOnlyList<SeasonTask> Tasks
    {
        get
        {
            var plant = new SeasonTask(SeasonWork.Plant, Gap.PlantingDay, Gap.NextCrop is { } next ? $"Plant {next}." : "The bed is free for the next crop.");
            if (Choice is null)
            {
                return [plant];
            }

            var (name, window) = (Choice.CoverCrop.Name, Choice.Window);
            var tasks = new List<SeasonTask> { new(SeasonWork.Sow, window.Sow, $"Sow {name}: from this day, at the latest on {PlainNumber.Date(window.SowBy)}.") };
            if (window.Flowers is { } flower && flower < window.KillBy)
            {
                tasks.Add(new(SeasonWork.Mow, flower, $"{name} can flower from about now: look, and mow it before seed sets."));
            }

            tasks.Add(End(name, window));
            tasks.Add(plant);
            return tasks;
        }
    }

    private SeasonTask End(string name, CoverWindow window)
    {
        var how = Choice!.CoverCrop.ValueOf("termination")?.Text is { } text ? $" How: {text}." : "";
        return window.Fate is WinterFate.DiesOfFrost or WinterFate.DiesInWinter
            ? new(SeasonWork.Kill, window.KillBy, $"Cold ends {name} before this day; end by now what still lives.{how}")
            : new(SeasonWork.Kill, window.KillBy, $"End {name} by this day.{how}");
    }
}
