using System.Runtime.CompilerServices;

namespace SoilAdvisor.Reports.Tests;

/// <summary>Compares a text with a reviewed file beside the tests; on a difference writes what was received next to it and fails.</summary>
internal static class ExpectedFile
{
    public static void Holds(string name, string received, [CallerFilePath] string test = "")
    {
        var path = Path.Combine(Path.GetDirectoryName(test)!, "expected", name);
        var expected = File.Exists(path) ? File.ReadAllText(path) : null;
        if (received == expected)
        {
            File.Delete(path + ".received");
            return;
        }

        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path + ".received", received);
        Assert.Fail($"{name} is not as reviewed. Compare it with {name}.received beside it; if the new text is right, put it in the place of the old one.");
    }
}
