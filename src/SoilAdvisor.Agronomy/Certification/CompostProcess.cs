using SoilAdvisor.Agronomy.Quantities;

namespace SoilAdvisor.Agronomy.Certification;

/// <summary>
/// Holds the temperature log of a compost pile against one rule. A day counts when each of its readings lies in the range, both limits
/// included. The log is judged twice, with its missing days as cold and as hot: only what both agree on is decided.
/// </summary>
public static class CompostProcess
{
    /// <summary>Evaluates a log.</summary>
    /// <param name="log">The log; without an entry nothing can be decided.</param>
    /// <param name="asked">What the rule asks.</param>
    public static HeatFound Evaluate(TemperatureLog log, HeatAsked asked)
    {
        if (log.Days.Count == 0)
        {
            return new(FindingState.NotDecidable, 0, 0, [], log.Turnings?.Count, null, null, $"The log holds no reading; {Range(asked)} for {Days(asked.Days)} is asked.");
        }

        var pile = Pile.Of(log, asked);
        var atWorst = Judge(pile.Met(missing: false), pile, asked, turningsUnknown: false);
        var atBest = Judge(pile.Met(missing: true), pile, asked, turningsUnknown: true);
        var state = atWorst.State == FindingState.Pass || atBest.State == FindingState.Act ? atWorst.State : FindingState.NotDecidable;
        var met = pile.Met(missing: false);
        return new(
            state,
            met.Count(m => m),
            Runs(met).Select(r => r.Length).DefaultIfEmpty(0).Max(),
            pile.Missing,
            log.Turnings is null ? null : atWorst.Turnings,
            atWorst.From is { } from ? pile.First.AddDays(from) : null,
            atWorst.To is { } to ? pile.First.AddDays(to) : null,
            Words(state, atWorst, atBest, pile, met, asked));
    }

    private static Judgement Judge(bool[] met, Pile pile, HeatAsked asked, bool turningsUnknown)
    {
        var enoughTurnings = asked.Turnings == 0 || (pile.Turnings is null && turningsUnknown);
        var counted = Array.IndexOf(met, true);
        if (asked.InARow == DaysInARow.NotAsked)
        {
            var to = Array.LastIndexOf(met, true);
            var turned = counted < 0 ? 0 : pile.TurnedBetween(counted, to);
            var pass = met.Count(m => m) >= asked.Days && (enoughTurnings || turned >= asked.Turnings);
            return new(pass ? FindingState.Pass : FindingState.Act, turned, counted < 0 ? null : counted, counted < 0 ? null : to);
        }

        var best = Runs(met).Where(r => r.Length >= asked.Days)
            .SelectMany(r => Enumerable.Range(r.Start, r.Length - asked.Days + 1))
            .Select(start => (Start: start, Turned: pile.TurnedBetween(start, start + asked.Days - 1)))
            .OrderByDescending(w => w.Turned).ThenBy(w => w.Start)
            .Cast<(int Start, int Turned)?>().FirstOrDefault();
        if (best is { } window && (enoughTurnings || window.Turned >= asked.Turnings))
        {
            return new(FindingState.Pass, window.Turned, window.Start, window.Start + asked.Days - 1);
        }

        // A longer hot time with enough turnings, but never so many in as few days as are asked, is for the certifier to read.
        var run = Runs(met).OrderByDescending(r => r.Length).ThenBy(r => r.Start).Cast<(int Start, int Length)?>().FirstOrDefault();
        var (from, last) = run is { } longest ? (longest.Start, longest.Start + longest.Length - 1) : (-1, -1);
        var within = from < 0 ? 0 : pile.TurnedBetween(from, last);
        var longEnough = run is { } hot && hot.Length >= asked.Days && within >= asked.Turnings;
        var scattered = asked.InARow == DaysInARow.NotStated
            && met.Count(m => m) >= asked.Days
            && (enoughTurnings || pile.TurnedBetween(counted, Array.LastIndexOf(met, true)) >= asked.Turnings);
        return new(longEnough || scattered ? FindingState.NotDecidable : FindingState.Act, within, from < 0 ? null : from, from < 0 ? null : last) { Scattered = scattered && !longEnough, LongEnough = longEnough };
    }

    private static string Words(FindingState state, Judgement worst, Judgement best, Pile pile, bool[] met, HeatAsked asked)
    {
        var run = Runs(met).Select(r => r.Length).DefaultIfEmpty(0).Max();
        var days = asked.InARow == DaysInARow.NotAsked
            ? $"{Days(met.Count(m => m))} at {Range(asked)}; {asked.Days} are asked, not necessarily in a row."
            : $"{Days(run)} in a row at {Range(asked)}, {met.Count(m => m)} in all; {asked.Days} are asked{(asked.InARow == DaysInARow.Asked ? " in a row" : "")}.";
        var turnings = (asked.Turnings, pile.Turnings) switch
        {
            (0, _) => "",
            (_, null) => $" The turnings were not written down; {asked.Turnings} are asked.",
            _ => $" {worst.Turnings} {(worst.Turnings == 1 ? "turning" : "turnings")} in that time; {asked.Turnings} are asked.",
        };
        var open = state != FindingState.NotDecidable ? ""
            : pile.Missing.Count > 0 && best.State == FindingState.Pass ? $" {Days(pile.Missing.Count)} without a reading ({Listed(pile.Missing)}) would decide."
            : worst.LongEnough ? " The turnings lie in the hot time, but not within as few days as are asked: the certifier decides."
            : worst.Scattered ? " The days do not follow each other, and the rule does not say whether they must: the certifier decides." : "";
        return days + turnings + open;
    }

    private static string Range(HeatAsked asked) => asked.Highest is { } highest
        ? $"{PlainNumber.Of(asked.Lowest.Fahrenheit)} to {PlainNumber.Of(highest.Fahrenheit)} °F"
        : $"{PlainNumber.Of(asked.Lowest.Fahrenheit)} °F or more";

    private static string Days(int count) => count == 1 ? "1 day" : $"{count} days";

    private static string Listed(IReadOnlyList<DateOnly> days) =>
        string.Join(", ", days.Take(5).Select(PlainNumber.Date)) + (days.Count > 5 ? $" and {days.Count - 5} more" : "");

    private static IEnumerable<(int Start, int Length)> Runs(bool[] met)
    {
        for (var i = 0; i < met.Length; i++)
        {
            var start = i;
            while (i < met.Length && met[i])
            {
                i++;
            }

            if (i > start)
            {
                yield return (start, i - start);
            }
        }
    }

    private sealed record Judgement(FindingState State, int Turnings, int? From, int? To)
    {
        public bool Scattered { get; init; }

        public bool LongEnough { get; init; }
    }

    /// <summary>The days of a log, one after the other: in range, out of range, or without a reading.</summary>
    private sealed record Pile(DateOnly First, bool?[] InRange, IReadOnlyList<DateOnly>? Turnings)
    {
        public IReadOnlyList<DateOnly> Missing { get; } = [.. Enumerable.Range(0, InRange.Length).Where(i => InRange[i] is null).Select(First.AddDays)];

        public static Pile Of(TemperatureLog log, HeatAsked asked)
        {
            var byDay = log.Days.ToLookup(d => d.Day);
            var first = log.Days.Min(d => d.Day);
            var length = log.Days.Max(d => d.Day).DayNumber - first.DayNumber + 1;
            return new(
                first,
                [
                    .. Enumerable.Range(0, length).Select(i => byDay[first.AddDays(i)].ToList()).Select(day => day.Count == 0
                        ? (bool?)null
                        : day.All(r => r.Lowest >= asked.Lowest && (asked.Highest is not { } highest || r.Highest <= highest))),
                ],
                log.Turnings);
        }

        public bool[] Met(bool missing) => [.. InRange.Select(d => d ?? missing)];

        public int TurnedBetween(int from, int to) => Turnings?.Count(t => t >= First.AddDays(from) && t <= First.AddDays(to)) ?? 0;
    }
}
