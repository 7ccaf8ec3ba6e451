using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Answers;

/// <summary>What the query asks: working=true, strict=true, units=us or metric, answers=hidden.</summary>
internal sealed record Asked(bool Working, bool Strict, bool Metric, bool AnswersHidden)
{
    public static readonly string[] Names = ["working", "strict", "units", "answers"];

    /// <summary>Reads the query; every fault at once.</summary>
    public static (Asked Asked, IReadOnlyList<Fault> Faults) Read(IQueryCollection query)
    {
        var faults = new List<Fault>();
        foreach (var name in query.Keys.Where(k => !Names.Contains(k, StringComparer.Ordinal)))
        {
            faults.Add(new Fault(Rules.Clip(name), "unknown-option", $"\"{Rules.Clip(name)}\" is not an option of this address.", $"Options: {string.Join(", ", Names)}."));
        }

        var hidden = Read(query, "answers", "hidden", "shown", faults);
        return (new Asked(Read(query, "working", "true", "false", faults) || hidden, Read(query, "strict", "true", "false", faults), Read(query, "units", "metric", "us", faults), hidden), faults);
    }

    private static bool Read(IQueryCollection query, string name, string yes, string no, List<Fault> faults)
    {
        if (!query.TryGetValue(name, out var values))
        {
            return false;
        }

        if (values.Count == 1 && (values[0] == yes || values[0] == no))
        {
            return values[0] == yes;
        }

        faults.Add(new Fault(name, "option-value", $"{name} is \"{Rules.Clip(values)}\".", $"Use {name}={no} or {name}={yes}."));
        return false;
    }
}
