using SoilAdvisor.Api.Http;
using SoilAdvisor.Api.SoilTests;

namespace SoilAdvisor.Api.LabFiles;

/// <summary>A row turned into a soil test still to be judged, with the column of each of its parts.</summary>
internal sealed class LabRowDraft
{
    private readonly Dictionary<string, int> columns = new(StringComparer.Ordinal);

    private LabRowDraft(WrittenSoilTest test) => Test = test;

    /// <summary>The soil test.</summary>
    public WrittenSoilTest Test { get; private set; }

    public static LabRowDraft Of(LabRow row, IReadOnlyList<LabColumn> columns, FaultList faults)
    {
        var draft = new LabRowDraft(new WrittenSoilTest());
        var readings = new List<WrittenReading>();
        var recommendations = new List<WrittenLabRecommendation>();
        for (var i = 0; i < columns.Count; i++)
        {
            var cell = row.Cells[i].Trim();
            switch (columns[i])
            {
                case LabColumn.About about:
                    draft.Say(about, cell, i, faults);
                    break;
                case LabColumn.Measured measured when cell.Length > 0:
                    draft.columns[$"/readings/{readings.Count.ToString(CultureInfo.InvariantCulture)}"] = i;
                    readings.Add(ReadCell(measured.Reading, cell));
                    break;
                case LabColumn.Recommended recommended when cell.Length > 0:
                    draft.columns[$"/labRecommendations/{recommendations.Count.ToString(CultureInfo.InvariantCulture)}"] = i;
                    recommendations.Add(recommended.Recommendation with { Value = new WrittenNumber(cell) });
                    break;
                default:
                    break;
            }
        }

        draft.Test = draft.Test with { Readings = readings, LabRecommendations = recommendations.Count > 0 ? recommendations : null };
        return draft;
    }

    /// <summary>The column that a fault belongs to; the first where none is its own.</summary>
    public int ColumnOf(string pointer)
    {
        foreach (var (part, column) in columns)
        {
            if (PointerPath.IsWithin(pointer, part))
            {
                return column;
            }
        }

        return 0;
    }

    /// <summary>The recommendations that were not found faulty.</summary>
    public IReadOnlyList<WrittenLabRecommendation>? Recommendations(FaultList faults) =>
        Test.LabRecommendations?.Where((_, i) => !faults.AnyWithin(PointerPath.Down("/labRecommendations", i))).ToList();

    private static WrittenReading ReadCell(WrittenReading reading, string cell)
    {
        var sign = cell.AsSpan().IndexOfAnyExcept("<>=");
        return sign > 0
            ? reading with { Comparator = cell[..sign], Value = new WrittenNumber(cell[sign..].Trim()) }
            : reading with { Value = new WrittenNumber(cell) };
    }

    private void Say(LabColumn.About about, string cell, int column, FaultList faults)
    {
        var text = cell.Length > 0 ? cell : null;
        var number = text is null ? (WrittenNumber?)null : new WrittenNumber(text);
        switch (about.Name)
        {
            case "id":
                (Test, columns["/id"]) = (Test with { Id = text }, column);
                break;
            case "sampled":
                (Test, columns["/sampled"]) = (Test with { Sampled = text }, column);
                break;
            case "lab":
                (Test, columns["/lab"]) = (Test with { Lab = text }, column);
                break;
            case "timing":
                (Test, columns["/timing"]) = (Test with { Timing = text }, column);
                break;
            case "texture":
                (Test, columns["/texture"]) = (Test with { Texture = text }, column);
                break;
            case "soil class":
                (Test, columns["/soilClass"]) = (Test with { SoilClass = text }, column);
                break;
            case "cores":
                (Test, columns["/cores"]) = (Test with { Cores = number }, column);
                break;
            case "bulk density":
                (Test, columns["/bulkDensity"]) = (Test with { BulkDensity = number }, column);
                break;
            case "lb/acre factor":
                (Test, columns["/poundsPerAcreFactor"]) = (Test with { PoundsPerAcreFactor = number }, column);
                break;
            case "free lime":
                (Test, columns["/freeLime"]) = (Test with { FreeLime = ReadYes(text, faults) }, column);
                break;
            default:
                (Test, columns["/depth"]) = (Test with { Depth = ReadDepth(text, about.Unit) }, column);
                break;
        }
    }

    private static bool? ReadYes(string? text, FaultList faults)
    {
        if (text is null or "yes" or "no")
        {
            return text is null ? null : text == "yes";
        }

        faults.Add("/freeLime", "yes-or-no", $"Free lime is \"{Rules.Clip(text)}\".", "Write yes or no, or leave the cell blank.");
        return null;
    }

    // "0-6" or "6", which is from the surface.
    private static WrittenDepth? ReadDepth(string? text, string? unit)
    {
        if (text is null)
        {
            return null;
        }

        var dash = text.IndexOfAny(['-', '–'], 1 <= text.Length ? 1 : 0);
        return dash > 0
            ? new WrittenDepth { From = new WrittenNumber(text[..dash].Trim()), To = new WrittenNumber(text[(dash + 1)..].Trim()), Unit = unit }
            : new WrittenDepth { From = WrittenNumber.Of(0), To = new WrittenNumber(text), Unit = unit };
    }
}
