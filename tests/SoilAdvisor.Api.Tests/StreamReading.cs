namespace SoilAdvisor.Api.Tests;

/// <summary>Reads a raw answer as far as a test needs it.</summary>
internal static class StreamReading
{
    /// <summary>Lines up to and including the one that holds a text, or to the end.</summary>
    public static async Task<string> ReadLinesUntilAsync(this StreamReader reader, string text)
    {
        var lines = new StringBuilder();
        while (await reader.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(60)) is { } line)
        {
            lines.AppendLine(line);
            if (line.Contains(text, StringComparison.Ordinal))
            {
                break;
            }
        }

        return lines.ToString();
    }
}
