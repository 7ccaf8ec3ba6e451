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

            var name = Choice.CoverCrop.Name;
            var end = Choice.CoverCrop.ValueOf("termination")?.Text is { } how ? $"End {name} by this day. How: {how}." : $"End {name} by this day.";
            var tasks = new List<SeasonTask> { new(SeasonWork.Sow, Choice.Window.Sow, $"Sow {name}, from this day on.") };
            if (FirstFlower is { } flower)
            {
                tasks.Add(new(SeasonWork.Mow, flower, $"{name} flowers from about now: look, and mow it before seed sets."));
            }

            tasks.Add(new(SeasonWork.Kill, Choice.Window.KillBy, end));
            tasks.Add(plant);
            return tasks;
        }
    }

    // Only where days to flower are published and the stand is not ended before.
    private DateOnly? FirstFlower =>
        Choice?.CoverCrop.ValueOf("days-to-flower") is { } days && (days.Low ?? days.Value) is { } first && Choice.Window.Sow.AddDays((int)first) is var day && day < Choice.Window.KillBy
            ? day
            : null;
}
