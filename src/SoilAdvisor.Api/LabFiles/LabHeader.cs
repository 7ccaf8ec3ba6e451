using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>Reads the names of columns. docs/lab-file.md defines them.</summary>
internal static class LabHeader
{
    /// <summary>Code of a name that fell apart at its comma.</summary>
    public const string NotQuoted = "header-not-quoted";

    private const string Recommended = "recommended ";

    private static readonly string[] AboutNames = ["id", "sampled", "lab", "depth", "timing", "texture", "soil class", "free lime", "cores", "bulk density", "lb/acre factor"];

    /// <summary>Reads one name; a faulty one is refused at its place.</summary>
    public static LabColumn Read(string header, string place, FaultList faults)
    {
        var before = faults.Count;
        var column = ReadName(header.Trim(), place, faults);
        return faults.Count == before ? column : new LabColumn.Refused();
    }

    private static LabColumn ReadName(string header, string place, FaultList faults)
    {
        var open = header.IndexOf('(', StringComparison.Ordinal);
        if (open >= 0 != header.EndsWith(')'))
        {
            faults.Add(place, NotQuoted, $"The column name \"{Rules.Clip(header)}\" opens or closes a bracket alone.", "Put a column name that holds a comma in double quotes: \"P (mg/kg, Mehlich-3 ICP)\".");
            return new LabColumn.Refused();
        }

        var name = (open < 0 ? header : header[..open]).Trim();
        string[] parts = open < 0 ? [] : [.. header[(open + 1)..^1].Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];
        if (AboutNames.FirstOrDefault(n => n.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } about)
        {
            return ReadAbout(about, parts, place, faults);
        }

        if (name.Equals("lime", StringComparison.OrdinalIgnoreCase) || name.StartsWith(Recommended, StringComparison.OrdinalIgnoreCase))
        {
            return ReadRecommended(name, parts, place, faults);
        }

        return ReadMeasured(name, parts, place, faults);
    }

    private static LabColumn ReadAbout(string name, string[] parts, string place, FaultList faults)
    {
        if (name == "depth" && parts is not (["in"] or ["cm"]))
        {
            faults.Add(place, "unit-missing", "The depth has no unit.", "Name the column depth (in) or depth (cm).");
        }

        return new LabColumn.About(name, parts.FirstOrDefault());
    }

    private static LabColumn ReadRecommended(string name, string[] parts, string place, FaultList faults)
    {
        if (parts.Length == 0)
        {
            faults.Add(place, "unit-missing", $"The column {Rules.Clip(name)} has no unit.", "Copy the unit from the report: lime (ton/acre).");
            return new LabColumn.Refused();
        }

        var what = name.StartsWith(Recommended, StringComparison.OrdinalIgnoreCase) ? name[Recommended.Length..].Trim() : "lime";
        return new LabColumn.Recommended(new WrittenLabRecommendation { What = what, Unit = parts[0], Basis = parts.Length > 1 ? string.Join(", ", parts[1..]) : null });
    }

    private static LabColumn ReadMeasured(string name, string[] parts, string place, FaultList faults)
    {
        var (analyte, basis) = SplitBasis(name);
        var hasUnit = parts.Length > 0 && Words.Units.Read(parts[0]).IsGiven;
        if (parts.Length > 1 && !hasUnit && Words.Units.Read(parts[0]).TryGet(out _, out var unknownUnit) is false)
        {
            faults.Add(place, unknownUnit);
            return new LabColumn.Refused();
        }

        var method = string.Join(' ', hasUnit ? parts[1..] : parts);
        var reading = Complete(new WrittenReading { Analyte = analyte, Basis = basis, Unit = hasUnit ? parts[0] : null }, method);

        // The same gate as for JSON, tried on a value that any analyte can have.
        var found = new FaultList();
        if (string.IsNullOrWhiteSpace(analyte))
        {
            found.Add(place, "header-empty", "A column has no name.", "Name it, or delete the column.");
        }
        else if (Words.Analytes.Read(analyte).TryGet(out _, out _) || IsOxide(analyte))
        {
            ReadingReader.Read(reading with { Value = WrittenNumber.Of(1) }, "", found);
        }
        else
        {
            found.Add(place, Unknown(name));
        }

        foreach (var fault in found.All)
        {
            faults.Add(fault with { Pointer = place });
        }

        return new LabColumn.Measured(reading);
    }

    private static Refusal Unknown(string name)
    {
        var near = NearestNames.Of(name, [.. Words.Analytes.Ids, "organic matter", "buffer pH", "lime", .. AboutNames]);
        return new Refusal(
            "unknown-column",
            $"\"{Rules.Clip(name)}\" is not a column of a lab file.",
            near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : $"Known: {string.Join(", ", AboutNames)}, an analyte ({string.Join(", ", Words.Analytes.Ids)}), lime.");
    }

    private static bool IsOxide(string analyte) => analyte.ToUpperInvariant() is "P2O5" or "K2O" or "CAO" or "MGO";

    private static (string Analyte, string? Basis) SplitBasis(string name)
    {
        var at = name.IndexOf(" as ", StringComparison.OrdinalIgnoreCase);
        return at > 0 && IsOxide(name[(at + 4)..].Trim()) ? (name[..at].Trim(), "oxide") : (name, null);
    }

    private static WrittenReading Complete(WrittenReading reading, string method)
    {
        if (method.Length == 0 || !Words.Analytes.Read(reading.Analyte ?? "").TryGet(out var analyte, out _) || !ReadingLimits.TakesExtractant(analyte))
        {
            return reading with { Method = method.Length > 0 ? method : null };
        }

        var last = method.LastIndexOf(' ');
        return last > 0 && Words.Detections.Read(method[(last + 1)..]).IsGiven
            ? reading with { Extractant = method[..last].Trim(), Detection = method[(last + 1)..] }
            : reading with { Extractant = method };
    }
}
