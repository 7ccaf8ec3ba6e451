namespace SoilAdvisor.Cli.Files;

/// <summary>A column that a list may have. Which units are known is the service's affair; here it only matters whether one has to be written.</summary>
/// <param name="Name">Its name, as <see cref="Heading.Name"/> writes it.</param>
/// <param name="ExampleUnit">A unit for the example; null for a column without unit.</param>
/// <param name="Required">Whether the list cannot be read without it.</param>
internal sealed record Column(string Name, string? ExampleUnit = null, bool Required = false)
{
    /// <summary>A heading to copy.</summary>
    public string Example => ExampleUnit is null ? Name : $"{Name} ({ExampleUnit})";
}
