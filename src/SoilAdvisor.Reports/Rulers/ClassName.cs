namespace SoilAdvisor.Reports.Rulers;

/// <summary>A printed class name broken into lines short enough for a narrow stretch.</summary>
internal static class ClassName
{
    private const int Longest = 9;

    public static IReadOnlyList<string> Lines(string name)
    {
        var lines = new List<string> { "" };
        foreach (var word in name.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines[^1].Length > 0 && lines[^1].Length + 1 + word.Length > Longest)
            {
                lines.Add("");
            }

            lines[^1] = lines[^1].Length == 0 ? word : lines[^1] + " " + word;
        }

        return lines;
    }
}
