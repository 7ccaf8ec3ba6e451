using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Http;
using UnitsNet;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>
/// The one place where a soil test turns from words into types. A line that cannot be read is refused at its place and the others stand;
/// nothing about a line is guessed.
/// </summary>
internal static class SoilTestReader
{
    private static readonly string[] WordsOfReading = ["analyte", "unit", "extractant", "detection", "basis", "method"];

    /// <summary>Reads a soil test that the validator has judged; null when the test as a whole was found faulty.</summary>
    /// <param name="written">As received.</param>
    /// <param name="pointer">Its place in the request.</param>
    /// <param name="faults">Faults so far; receives those found here.</param>
    public static SoilTest? Read(WrittenSoilTest written, string pointer, FaultList faults)
    {
        var readings = ReadReadings(written.Readings ?? [], PointerPath.Down(pointer, "readings"), faults);
        var texture = ReadWord(written.Texture, Words.SoilGroups, PointerPath.Down(pointer, "texture"), faults);
        var timing = ReadWord(written.Timing, Words.Timings, PointerPath.Down(pointer, "timing"), faults);
        if (faults.HasFaultOfWhole(pointer))
        {
            return null;
        }

        var test = new SoilTest(
            written.Id!.Trim(),
            Dates.Read(written.Sampled),
            written.Lab,
            ReadDepth(written.Depth),
            texture,
            written.FreeLime,
            written.PoundsPerAcreFactor?.Number,
            readings,
            ReadRecommendations(written.LabRecommendations ?? [], PointerPath.Down(pointer, "labRecommendations"), faults))
        {
            Cores = written.Cores?.Number is { } cores ? (int)Math.Floor(cores) : null,
            BulkDensity = written.BulkDensity?.Number,
            Timing = timing,
        };
        return WithoutTheImpossible(test, faults);
    }

    private static SoilTest WithoutTheImpossible(SoilTest test, FaultList faults)
    {
        var impossible = SoilTestSuspicions.ImpossibleIn(test);
        foreach (var doubt in impossible)
        {
            faults.Add(doubt.Readings[0].Where, doubt.Code, doubt.Message, doubt.Suggestion);
        }

        return impossible.Count == 0 ? test : test with { Readings = [.. test.Readings.Except(impossible.Select(d => d.Readings[0]))] };
    }

    private static SampleDepth? ReadDepth(WrittenDepth? depth) =>
        depth is { From.Number: { } from, To.Number: { } to } ? new SampleDepth(ReadLength(from, depth.Unit), ReadLength(to, depth.Unit)) : null;

    private static Length ReadLength(decimal value, string? unit) => unit == "cm" ? Length.FromCentimeters((double)value) : Length.FromInches((double)value);

    private static T? ReadWord<T>(string? word, Vocabulary<T> vocabulary, string pointer, FaultList faults)
        where T : struct, Enum
    {
        if (string.IsNullOrWhiteSpace(word))
        {
            return null;
        }

        if (vocabulary.Read(word).TryGet(out var value, out var reason))
        {
            return value;
        }

        faults.Add(pointer, reason);
        return null;
    }

    private static List<LabRecommendation> ReadRecommendations(IReadOnlyList<WrittenLabRecommendation> written, string pointer, FaultList faults)
    {
        var read = new List<LabRecommendation>(written.Count);
        for (var i = 0; i < written.Count; i++)
        {
            if (!faults.AnyWithin(PointerPath.Down(pointer, i)))
            {
                read.Add(new LabRecommendation(written[i].What!.Trim(), written[i].Value!.Value.Number!.Value, written[i].Unit!.Trim(), written[i].Basis));
            }
        }

        return read;
    }

    // A faulty number or comparator does not keep the words of the line from being judged too.
    private static bool CanBeRead(WrittenReading? written, string pointer, FaultList faults) =>
        written is not null && !WordsOfReading.Any(member => faults.AnyWithin(PointerPath.Down(pointer, member)));

    private static List<Reading> ReadReadings(IReadOnlyList<WrittenReading> written, string pointer, FaultList faults)
    {
        var read = new List<Reading>(written.Count);
        for (var i = 0; i < written.Count; i++)
        {
            var here = PointerPath.Down(pointer, i);
            if (!CanBeRead(written[i], here, faults))
            {
                continue;
            }

            if (ReadingReader.Read(written[i], here, faults) is { } reading && !faults.AnyWithin(here))
            {
                if (read.Any(r => r.Analyte == reading.Analyte))
                {
                    faults.Add(here, "duplicate-analyte", $"{Words.Analytes.IdOf(reading.Analyte)} stands twice in one soil test.", "Keep the value of the method that your guide uses, or send two soil tests.");
                }
                else
                {
                    read.Add(reading);
                }
            }
        }

        return read;
    }
}
