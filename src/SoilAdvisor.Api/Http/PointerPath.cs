using System.Text;

namespace SoilAdvisor.Api.Http;

/// <summary>JSON Pointers (RFC 6901) from the paths that the validator writes.</summary>
internal static class PointerPath
{
    /// <summary>"SoilTest.Readings[0].Value" becomes "/soilTest/readings/0/value".</summary>
    public static string FromProperty(string path)
    {
        var pointer = new StringBuilder();
        foreach (var part in path.Split('.', '[', ']'))
        {
            if (part.Length > 0)
            {
                pointer.Append('/').Append(MemberNames.Policy.ConvertName(part));
            }
        }

        return pointer.ToString();
    }

    /// <summary>One step further down.</summary>
    public static string Down(string pointer, string name) => $"{pointer}/{name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    /// <summary>One element of an array.</summary>
    public static string Down(string pointer, int index) => string.Create(CultureInfo.InvariantCulture, $"{pointer}/{index}");

    /// <summary>Whether a pointer is another or lies below it.</summary>
    public static bool IsWithin(string pointer, string parent) =>
        pointer.StartsWith(parent, StringComparison.Ordinal) && (pointer.Length == parent.Length || pointer[parent.Length] == '/');
}
