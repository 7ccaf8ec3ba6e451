using System.Text.Json.Nodes;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Numbers typed as symbol=value.</summary>
internal static class NumbersGiven
{
    public static JsonObject Read(IEnumerable<string> typed, Errand errand)
    {
        var inputs = new JsonObject();
        foreach (var pair in typed)
        {
            if (Split(pair) is not var (symbol, value))
            {
                errand.Complaints.Add(new("--with", $"\"{pair}\" is not a symbol with a value.", "Write for example --with pH=5.6"));
            }
            else if (!inputs.TryAdd(symbol, value))
            {
                errand.Complaints.Add(new("--with", $"\"{symbol}\" is given twice.", "Leave one of them out."));
            }
            else
            {
                errand.Places.Note($"/inputs/{symbol}", $"--with {pair}");
            }
        }

        errand.Places.Note("/inputs", "--with");
        return inputs;
    }

    /// <summary>Symbol and what stands behind the sign; null where one is missing.</summary>
    public static (string Symbol, string Value)? Split(string pair)
    {
        var sign = pair.IndexOf('=', StringComparison.Ordinal);
        return sign > 0 && pair[..sign].Trim() is { Length: > 0 } symbol ? (symbol, pair[(sign + 1)..].Trim()) : null;
    }
}
