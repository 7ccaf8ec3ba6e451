using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.SoilTests;

/// <summary>One line of a report, from words to types. A missing unit, extractant or basis is asked for, never filled in.</summary>
internal static class ReadingReader
{
    private static readonly Dictionary<string, string> Oxides = new(StringComparer.OrdinalIgnoreCase)
    {
        ["P2O5"] = "P",
        ["K2O"] = "K",
        ["CaO"] = "Ca",
        ["MgO"] = "Mg",
    };

    /// <summary>Reads one line; null when it was refused. Its words are judged even where its number was found faulty, so that all is said at once.</summary>
    public static Reading? Read(WrittenReading written, string pointer, FaultList faults)
    {
        var before = faults.Count;
        var analyte = ReadAnalyte(written, pointer, faults);
        if (analyte is not { } known)
        {
            return null;
        }

        var unit = ReadUnit(written, known, pointer, faults);
        var extractant = ReadExtractant(written, known, pointer, faults);
        var detection = ReadWord(Words.Detections, written.Detection, PointerPath.Down(pointer, "detection"), faults);
        var basis = ReadWord(Words.Bases, written.Basis, PointerPath.Down(pointer, "basis"), faults) ?? Basis.Element;
        var procedure = ReadProcedure(written, known, pointer, faults);
        var place = PointerPath.Down(pointer, "value");
        if (faults.AnyWithin(place))
        {
            return null;
        }

        var amount = ReadAmount(written);
        if (unit is { } stated && ReadingLimits.WhyImpossible(known, amount, stated) is { } impossible)
        {
            faults.Add(place, impossible);
        }

        return faults.Count == before ? new Reading(known, amount, unit!.Value, new Method(extractant, detection, procedure, basis), pointer) : null;
    }

    private static Analyte? ReadAnalyte(WrittenReading written, string pointer, FaultList faults)
    {
        var here = PointerPath.Down(pointer, "analyte");
        if (Oxides.TryGetValue(written.Analyte!.Trim(), out var element))
        {
            faults.Add(here, "oxide-analyte", $"{written.Analyte.Trim()} is an oxide; a soil test counts {element}, and the two differ.", $"If the laboratory printed {written.Analyte.Trim()}, write analyte {element} with basis oxide. If it printed {element}, write {element}.");
            return null;
        }

        return ReadWord(Words.Analytes, written.Analyte, here, faults);
    }

    private static ReportingUnit? ReadUnit(WrittenReading written, Analyte analyte, string pointer, FaultList faults)
    {
        var here = PointerPath.Down(pointer, "unit");
        var takes = ReadingLimits.UnitsOf(analyte);
        if (string.IsNullOrWhiteSpace(written.Unit))
        {
            if (takes.Contains(ReportingUnit.PhUnits))
            {
                return ReportingUnit.PhUnits;
            }

            faults.Add(here, "unit-missing", $"{Words.Analytes.IdOf(analyte)} has no unit.", "Copy the unit from the report, or ask the laboratory which it printed: mg/kg (the same as ppm) and lb/acre differ about twofold.");
            return null;
        }

        if (ReadWord(Words.Units, written.Unit, here, faults) is not { } unit)
        {
            return null;
        }

        if (takes.Contains(unit))
        {
            return unit;
        }

        faults.Add(here, "unit-not-for-analyte", $"{Words.Analytes.IdOf(analyte)} is not reported in {Words.Units.IdOf(unit)}.", $"Use {string.Join(" or ", takes.Select(Words.Units.IdOf))}.");
        return null;
    }

    private static Extractant? ReadExtractant(WrittenReading written, Analyte analyte, string pointer, FaultList faults)
    {
        var here = PointerPath.Down(pointer, "extractant");
        var given = !string.IsNullOrWhiteSpace(written.Extractant);
        if (!ReadingLimits.TakesExtractant(analyte))
        {
            if (given)
            {
                faults.Add(here, "extractant-not-for-analyte", $"{Words.Analytes.IdOf(analyte)} takes no extractant.", "Leave it out; state how it was measured under method.");
            }

            return null;
        }

        if (!given)
        {
            // Nitrate, ammonium and chloride come out whole with any of the usual solutions, so the question does not arise.
            if (analyte is not (Analyte.NitrateN or Analyte.AmmoniumN or Analyte.Cl))
            {
                faults.Add(here, "extractant-missing", $"{Words.Analytes.IdOf(analyte)} has no extractant, so the number cannot be read: each extractant has its own scale.", "Look for the method on the report, or ask the laboratory: \"Which extractant is this, for example Mehlich-3, and for phosphorus, was it read by ICP or by colour?\"");
            }

            return null;
        }

        return ReadWord(Words.Extractants, written.Extractant, here, faults);
    }

    private static Procedure? ReadProcedure(WrittenReading written, Analyte analyte, string pointer, FaultList faults)
    {
        if (string.IsNullOrWhiteSpace(written.Method))
        {
            return null;
        }

        var here = PointerPath.Down(pointer, "method");
        if (Words.ProceduresOf(analyte) is { } procedures)
        {
            return ReadWord(procedures, written.Method, here, faults);
        }

        faults.Add(here, "method-not-for-analyte", $"{Words.Analytes.IdOf(analyte)} takes an extractant, not a method.", "State the extractant, and for phosphorus the detection.");
        return null;
    }

    private static T? ReadWord<T>(Vocabulary<T> vocabulary, string? text, string pointer, FaultList faults)
        where T : struct, Enum
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        if (vocabulary.Read(text).TryGet(out var value, out var reason))
        {
            return value;
        }

        faults.Add(pointer, reason);
        return null;
    }

    private static Amount ReadAmount(WrittenReading written)
    {
        var number = written.Value!.Value.Number!.Value;
        return written.Comparator switch
        {
            "<" or "<=" => Amount.Below(number),
            ">" or ">=" => Amount.Above(number),
            _ => Amount.Measured(number),
        };
    }
}
