using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>Writes entries of the reference tables out, as printed.</summary>
internal static class EntryWriter
{
    public static GuideEntry Write(Guide guide, Tables tables, Bibliography bibliography) => new(
        guide.Id, guide.Title, guide.Institution, guide.Regions, guide.Crops, guide.CalibratedOn, guide.Notes,
        [.. tables.RateTables.Values.Where(t => t.PairWith(guide.Id) is not null).Select(t => t.Id)],
        [.. guide.Scales.Select(s => Write(s, bibliography))],
        [.. guide.Indices.Select(i => Write(i, bibliography))],
        [.. guide.Ceilings.Select(c => Write(c, bibliography))],
        bibliography.Cite(guide.Source));

    public static MethodConversionEntry Write(MethodConversion conversion, Tables tables, Bibliography bibliography) => new(
        conversion.Id,
        Words.Analytes.IdOf(conversion.Analyte),
        MethodOf(conversion.Analyte, conversion.From),
        MethodOf(conversion.Analyte, conversion.To),
        conversion.Line is null ? "refuse" : "convert",
        conversion.Line?.Slope,
        conversion.Line?.Intercept,
        conversion.Line is { } line ? Words.Units.IdOf(line.Unit) : null,
        conversion.Line?.Lower,
        conversion.Line?.Upper,
        conversion.Line?.RSquared,
        conversion.Line?.Error,
        conversion.Line?.ErrorIsOurs,
        conversion.HighestPh,
        conversion.SampleSet,
        conversion.Validity,
        conversion.Reason,
        conversion.Disagreement,
        bibliography.Cite(conversion.Source));

    private static string MethodOf(Analyte analyte, Method method) => method.Extractant is { } extractant
        ? Words.Extractants.IdOf(extractant) + (method.Detection is { } detection ? ", " + Words.Detections.IdOf(detection) : "")
        : method.Procedure is { } procedure ? Words.ProceduresOf(analyte)!.IdOf(procedure) : "";

    public static CropEntry Write(Crop crop, Tables tables, Bibliography bibliography) => new(
        crop.Id, crop.Name, crop.LatinName, crop.Family, crop.EdiblePart,
        crop.SoilContact == SoilContact.NoContact ? "no-contact" : "contact",
        crop.BoronResponse, crop.SensitiveToBoron,
        [.. crop.Values.Select(v => new PublishedValue(v.Property, v.Value, v.Low, v.High, v.Unit, null, v.Note, bibliography.Cite(v.Source)))],
        [.. crop.Removals.Select(r => new RemovalEntry(r.Part, r.Basis, r.Unit, r.N, r.P2O5, r.K2O, r.Ca, r.Mg, r.S, r.Note, bibliography.Cite(r.Source)))],
        bibliography.Cite(crop.Source));

    public static MaterialEntry Write(Material material, Tables tables, Bibliography bibliography) => new(
        material.Id, material.Name, material.Category, material.Basis, Lower(material.Manure), Lower(material.Status), material.Rule, material.CountedInSeason, material.NeverWith,
        [.. material.Values.Select(v => new PublishedValue(v.Property, v.Value, v.Low, v.High, v.Unit, null, v.Note, bibliography.Cite(v.Source)))],
        [.. material.Cautions.Select(c => new CautionEntry(c.Id, c.Text, bibliography.Cite(c.Source)))],
        material.Note,
        bibliography.Cite(material.Source));

    public static CoverCropEntry Write(CoverCrop coverCrop, Tables tables, Bibliography bibliography) => new(
        coverCrop.Id, coverCrop.Name, coverCrop.LatinName, coverCrop.Family, coverCrop.LifeCycle, coverCrop.Season,
        [.. coverCrop.Values.Select(v => new PublishedValue(v.Property, v.Value, v.Low, v.High, v.Unit, v.Text, v.Note, bibliography.Cite(v.Source)))],
        bibliography.Cite(coverCrop.Source));

    public static LimeMethodEntry Write(LimeMethod method, Tables tables, Bibliography bibliography) => new(
        method.Id, method.Title, method.Institution, method.Regions,
        LimeWords.Reads.IdOf(method.Reads),
        Buffers(method).FirstOrDefault(),
        Buffers(method),
        LimeWords.Kinds.IdOf(method.Kind),
        method.FormulaId, method.Unit, method.Basis.Words,
        new Units(false).Of(method.Depth),
        method.Targets, LimeWords.Soils.IdOf(method.Limits.Soil), method.SaltScale is { } scale ? Words.ProceduresOf(Analyte.Ph)!.IdOf(scale) : null,
        method.Limits.PhFrom, method.Limits.PhTo, method.Limits.BufferFrom, method.Limits.BufferTo, LimeWords.Rows.IdOf(method.Rows), method.Interpolate,
        [.. method.Parameters.Select(p => new PublishedValue(p.Symbol, p.Value, null, null, p.Unit, p.Meaning, null, bibliography.Cite(p.Source)))],
        [.. method.Equations.Select(e => new LimeEquationEntry(e.TargetPh, e.Constant, e.PerBuffer, e.PerBufferSquare, e.PerPh, bibliography.Cite(e.Source)))],
        [.. method.Cells.Select(c => new LimeCellEntry(c.BufferPh, c.Acidity, c.SoilPh, [.. c.Soils.Select(Words.SoilGroups.IdOf)], c.TargetPh, c.Rate, bibliography.Cite(c.Source)))],
        method.Notes,
        bibliography.Cite(method.Source));

    private static List<string> Buffers(LimeMethod method) => [.. method.Buffers.Select(Words.ProceduresOf(Analyte.BufferPh)!.IdOf)];

    public static RuleEntry Write(OrganicRule rule, Tables tables, Bibliography bibliography) =>
        new(rule.Id, rule.Standard, rule.Section, rule.Subject, rule.WhatItAsks, bibliography.Cite(rule.Source));

    public static SourceAnswer Write(Source source, Tables tables, Bibliography bibliography) => Bibliography.Of(source, []);

    private static GuideIndexEntry Write(GuideIndex index, Bibliography bibliography) => new(
        index.Id, index.Formula.Title, Words.Analytes.IdOf(index.About), index.Formula.Shown,
        [.. index.Inputs.Select(i => new GuideIndexInputEntry(
            i.Symbol, Words.Analytes.IdOf(i.Analyte), i.Analyte == Analyte.Ph ? "pH in water" : i.Method.ToString(), Words.Units.IdOf(i.Unit)))],
        [.. index.Scales.Select(s => Write(s, bibliography))],
        bibliography.Cite(index.Source));

    private static GuideCeilingEntry Write(GuideCeiling ceiling, Bibliography bibliography) => new(
        Words.Analytes.IdOf(ceiling.Analyte),
        ceiling.Index,
        ceiling.Index is null ? ceiling.Method.ToString() : null,
        new Quantity(ceiling.Limit, Words.Units.IdOf(ceiling.Unit)),
        ceiling.LimitIncluded, ceiling.Jurisdiction, ceiling.WhatItAsks, ceiling.Condition,
        bibliography.Cite(ceiling.Source));

    private static GuideScaleEntry Write(RatingScale scale, Bibliography bibliography) => new(
        Words.Analytes.IdOf(scale.Analyte),
        scale.Method.ToString(),
        Words.Units.IdOf(scale.Unit),
        scale.CropGroup,
        [.. scale.SoilGroups.Select(Words.SoilGroups.IdOf)],
        scale.Subregion,
        [.. scale.Conditions.Select(c => $"{c} {Words.Units.IdOf(c.UnitOn(scale))}")],
        scale.Timing is { } timing ? Words.Timings.IdOf(timing) : null,
        scale.Depth is { } depth ? string.Create(CultureInfo.InvariantCulture, $"{depth.From.Inches:0.#} to {depth.To.Inches:0.#} in") : null,
        [.. scale.Classes.Select(c => new GuideClassEntry(
            c.Name, RatingWriter.WordOf(c.Standing), c.StandingIsOurs, c.Lower, c.LowerIncluded, c.Upper, c.UpperIncluded,
            c.LowerPerCec == 0 ? null : c.LowerPerCec, c.UpperPerCec == 0 ? null : c.UpperPerCec, bibliography.Cite(c.Source)))]);

    private static string Lower<T>(T value)
        where T : struct, Enum => value.ToString().ToLowerInvariant();
}
