using System.Text;

namespace SoilAdvisor.ReferenceTables.Reading;

/// <summary>One file of the folder as it was found.</summary>
/// <param name="Path">Path below the folder of tables, with forward slashes.</param>
/// <param name="Bytes">Its content, UTF-8 without a byte order mark.</param>
internal sealed record TableText(string Path, byte[] Bytes)
{
    public const string EncodingCode = "not-utf-8";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>File name without its ending.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    public string Folder => FolderOf(Path);

    public bool IsCsv => Path.EndsWith(".csv", StringComparison.Ordinal);

    public static string FolderOf(string path) => path.LastIndexOf('/') is var slash and >= 0 ? path[..slash] : "";

    /// <summary>Null when the text can be read; otherwise why not.</summary>
    public TableProblem? EncodingFault()
    {
        if (Bytes.AsSpan().StartsWith(Encoding.UTF8.Preamble))
        {
            return new TableProblem(Path, 1, null, EncodingCode, "The file begins with a byte order mark. Save it as UTF-8 without one.");
        }
        try
        {
            _ = Strict.GetCharCount(Bytes);
            return null;
        }
        catch (DecoderFallbackException fault)
        {
            return new TableProblem(Path, 1 + Bytes.AsSpan(0, fault.Index).Count((byte)'\n'), null, EncodingCode, "The file holds bytes that are not UTF-8. Save it as UTF-8.");
        }
    }
}
