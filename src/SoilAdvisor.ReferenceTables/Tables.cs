using System.Collections.Frozen;
using System.Collections.ObjectModel;
using SoilAdvisor.Agronomy.Acidity;
using SoilAdvisor.Agronomy.Certainty;
using SoilAdvisor.Agronomy.Cations;
using SoilAdvisor.Agronomy.Certification;
using SoilAdvisor.Agronomy.CoverCrops;
using SoilAdvisor.Agronomy.Crops;
using SoilAdvisor.Agronomy.FieldWork;
using SoilAdvisor.Agronomy.Materials;
using SoilAdvisor.Agronomy.Materials.Metals;
using SoilAdvisor.Agronomy.MethodConversions;
using SoilAdvisor.Agronomy.NitrogenSupply;
using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.Ratings;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Agronomy.YearsAhead;
using SoilAdvisor.ReferenceTables.Acidity;
using SoilAdvisor.ReferenceTables.Certainty;
using SoilAdvisor.ReferenceTables.Cations;
using SoilAdvisor.ReferenceTables.Certification;
using SoilAdvisor.ReferenceTables.Checks;
using SoilAdvisor.ReferenceTables.CoverCrops;
using SoilAdvisor.ReferenceTables.Crops;
using SoilAdvisor.ReferenceTables.Guides;
using SoilAdvisor.ReferenceTables.Kinds;
using SoilAdvisor.ReferenceTables.Materials;
using SoilAdvisor.ReferenceTables.MethodConversions;
using SoilAdvisor.ReferenceTables.NitrogenSupply;
using SoilAdvisor.ReferenceTables.Reading;
using SoilAdvisor.ReferenceTables.YearsAhead;

namespace SoilAdvisor.ReferenceTables;

/// <summary>
/// The reference tables, read once and checked as a whole. Immutable; safe for any number of threads. Every dictionary is read by the
/// permanent id and walked in the order of the files, so that the same tables always give the same plan.
/// </summary>
public sealed class Tables
{
    /// <summary>Name of the folder.</summary>
    public const string FolderName = "reference-tables";

    /// <summary>Environment variable that names another folder.</summary>
    public const string FolderVariable = "SOILADVISOR_TABLES";

    private readonly FrozenDictionary<string, string> cropNames;

    private Tables(TableFolder folder, string versionId)
    {
        VersionId = versionId;
        Sources = ById(folder.Sources.Select(s => s.Source), s => s.Id);
        Guides = ById(folder.Guides.Select(d => GuideBuilding.Build(d, folder)), g => g.Id);
        RateTables = ById(folder.RateTables.Select(d => RateTableBuilding.Build(d, folder)), t => t.Id);
        Crops = ById(CropBuilding.Build(folder), c => c.Id);
        Cautions = ById(MaterialBuilding.Cautions(folder), c => c.Id);
        Materials = ById(MaterialBuilding.Build(folder, Cautions), m => m.Id);
        CoverCrops = ById(CoverCropBuilding.Build(folder), c => c.Id);
        CoverCropTables = CoverCropBuilding.Tables([.. CoverCrops.Values], folder);
        CoverCropRules = CoverCropBuilding.Rules(folder);
        LimeMethods = ById(folder.LimeMethods.Select(d => LimeMethodBuilding.Build(d, folder)), m => m.Id);
        MethodConversions = ById(MethodConversionBuilding.Build(folder), c => c.Id);
        Cations = CationBuilding.Build(folder);
        TargetPhs = [.. TargetPhBuilding.Build(folder)];
        Liming = LimingBuilding.Build(folder);
        OrganicRules = ById(OrganicRuleBuilding.Build(folder), r => r.Id);
        Variability = VariabilityBuilding.Build(folder);
        TestMovements = TestMovementBuilding.Build(folder);
        QuadraticRates = ById(RateEquationBuilding.Quadratics(folder), q => q.Id);
        SidedressTables = [.. RateEquationBuilding.SidedressTables(folder)];
        MetalRules = ById(MetalRuleBuilding.Build(folder), r => r.Id);
        SaltLimits = [.. folder.RowsOf(RowKinds.SaltLimits).Select(r => new SaltLimit(r.Needed("extract"), Conductivity.FromDecisiemensPerMetre((double)r.NeededNumber("above")), r.Citation()))];
        ResamplingIntervals = [.. folder.RowsOf(RowKinds.Resampling).Select(r => new ResamplingInterval(r.Needed("site"), (int)r.NeededNumber("years"), r.Citation()))];
        Nitrogen = NitrogenBuilding.Build(folder);
        cropNames = folder.RowsOf(RowKinds.Aliases).Select(row => KeyValuePair.Create(row.Needed("alias"), row.Needed("crop")))
            .Concat(Crops.Keys.Select(id => KeyValuePair.Create(id, id)))
            .ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Sixteen hexadecimal digits that change with any cell of any table; kept with a plan so that it can be explained later.</summary>
    public string VersionId { get; }

    /// <summary>The bibliography by id.</summary>
    public IReadOnlyDictionary<string, Source> Sources { get; }

    /// <summary>Interpretation guides by id.</summary>
    public IReadOnlyDictionary<string, Guide> Guides { get; }

    /// <summary>Rate tables by id.</summary>
    public IReadOnlyDictionary<string, RateTable> RateTables { get; }

    /// <summary>Crops by id.</summary>
    public IReadOnlyDictionary<string, Crop> Crops { get; }

    /// <summary>Materials by id.</summary>
    public IReadOnlyDictionary<string, Material> Materials { get; }

    /// <summary>Cautions by id.</summary>
    public IReadOnlyDictionary<string, Caution> Cautions { get; }

    /// <summary>Cover crops by id.</summary>
    public IReadOnlyDictionary<string, CoverCrop> CoverCrops { get; }

    /// <summary>What is published on cover crops: regional dates, waits, hosts, trials, nitrogen by stage, termination guidance.</summary>
    public CoverCropTables CoverCropTables { get; }

    /// <summary>Rules for sowing, mixing and measuring cover crops; empty where the folder has no such table.</summary>
    public CoverCropRules CoverCropRules { get; }

    /// <summary>Lime methods by id.</summary>
    public IReadOnlyDictionary<string, LimeMethod> LimeMethods { get; }

    /// <summary>Conversions between methods, and warnings against them, by id.</summary>
    public IReadOnlyDictionary<string, MethodConversion> MethodConversions { get; }

    /// <summary>Published rules for the sum of cations.</summary>
    public CationRules Cations { get; }

    /// <summary>Published target pH by crop group, soil and region, in the order of the file.</summary>
    public IReadOnlyList<TargetPhRow> TargetPhs { get; }
    /// <summary>Figures from a lime requirement to what is spread: indexes of stone, doses, magnesium cut-offs, sulfur.</summary>
    public LimingTables Liming { get; }

    /// <summary>Rules of the organic standards by id.</summary>
    public IReadOnlyDictionary<string, OrganicRule> OrganicRules { get; }

    /// <summary>How far results of the same ground lie apart; without rows where the folder has no such table.</summary>
    public Variability Variability { get; }

    /// <summary>How far what is spread or removed moves a soil test; without rows where the folder has no such table.</summary>
    public TestMovements TestMovements { get; }

    /// <summary>Parabolas from a soil test index to a rate, by id.</summary>
    public IReadOnlyDictionary<string, QuadraticRate> QuadraticRates { get; }

    /// <summary>Tables from a pre-sidedress nitrate test to the nitrogen to sidedress.</summary>
    public IReadOnlyList<SidedressTable> SidedressTables { get; }

    /// <summary>Limits on heavy metals, a rule for each jurisdiction, by id.</summary>
    public IReadOnlyDictionary<string, MetalRule> MetalRules { get; }

    /// <summary>Conductivities of a material above which its salts can harm, by extract.</summary>
    public IReadOnlyList<SaltLimit> SaltLimits { get; }

    /// <summary>After how many years a soil is tested again, by site.</summary>
    public IReadOnlyList<ResamplingInterval> ResamplingIntervals { get; }

    /// <summary>Nitrogen in time: release by year and by week, ammonium kept, thresholds, uptake; without rows where the folder has none.</summary>
    public NitrogenTables Nitrogen { get; }

    /// <summary>Reads and checks the folder.</summary>
    /// <param name="folder">The folder of tables.</param>
    /// <exception cref="ReferenceTableException">The tables hold faults; it carries all of them.</exception>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static Tables Load(string folder)
    {
        var texts = FolderFiles.Read(folder);
        // The version reads every byte and needs nothing of the examination, so the two share the cores: every start waits for both.
        var version = Task.Run(() => FolderFiles.VersionOf(texts));
        var (read, problems) = Examine(texts);
        return problems.Count == 0 ? new Tables(read, version.GetAwaiter().GetResult()) : throw new ReferenceTableException(problems);
    }

    /// <summary>Every fault of the folder, sorted by file and line; empty when it can be used.</summary>
    /// <param name="folder">The folder of tables.</param>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static IReadOnlyList<TableProblem> Check(string folder) => Examine(FolderFiles.Read(folder)).Problems;

    /// <summary>The folder of tables: the one named by SOILADVISOR_TABLES, or the first called reference-tables in or above a place.</summary>
    /// <param name="start">Where to begin, for example the folder of the program.</param>
    /// <exception cref="DirectoryNotFoundException">None was found; the message says what to do.</exception>
    public static string FindFolder(string start)
    {
        if (Environment.GetEnvironmentVariable(FolderVariable) is { Length: > 0 } named)
        {
            return Directory.Exists(named) ? named : throw new DirectoryNotFoundException($"{FolderVariable} names \"{named}\", which is not a folder.");
        }
        for (var place = new DirectoryInfo(start); place is not null; place = place.Parent)
        {
            var candidate = Path.Combine(place.FullName, FolderName);
            if (Directory.Exists(candidate))
            {
                return candidate;
            }
        }
        throw new DirectoryNotFoundException($"No folder {FolderName} in \"{start}\" or above it. Set {FolderVariable} to the folder of tables.");
    }

    /// <summary>A crop by its id or by another name of it; upper and lower case are the same.</summary>
    /// <param name="idOrAlias">Id or alias.</param>
    public Answer<Crop> Crop(string idOrAlias) => cropNames.TryGetValue(idOrAlias.Trim(), out var id)
        ? Answer<Crop>.Given(Crops[id])
        : Unknown<Crop>("crop", idOrAlias, cropNames.Keys);

    /// <summary>A material by its id.</summary>
    /// <param name="id">Id.</param>
    public Answer<Material> Material(string id) => Find(Materials, "material", id);

    /// <summary>A cover crop by its id.</summary>
    /// <param name="id">Id.</param>
    public Answer<CoverCrop> CoverCrop(string id) => Find(CoverCrops, "cover-crop", id);

    /// <summary>A guide by its id.</summary>
    /// <param name="id">Id.</param>
    public Answer<Guide> Guide(string id) => Find(Guides, "guide", id);

    /// <summary>A lime method by its id.</summary>
    /// <param name="id">Id.</param>
    public Answer<LimeMethod> LimeMethod(string id) => Find(LimeMethods, "lime-method", id);

    /// <summary>A conversion between methods by its id.</summary>
    /// <param name="id">Id.</param>
    public Answer<MethodConversion> MethodConversion(string id) => Find(MethodConversions, "method-conversion", id);

    /// <summary>A rule on heavy metals by its id.</summary>
    /// <param name="id">Id.</param>
    public Answer<MetalRule> MetalRule(string id) => Find(MetalRules, "metal-rule", id);

    private static (TableFolder Folder, IReadOnlyList<TableProblem> Problems) Examine(IReadOnlyList<TableText> texts)
    {
        var (folder, problems) = FolderReader.Read(texts);
        problems.AddRange(TableChecks.All.AsParallel().SelectMany(check => check.Check(folder)));
        return (folder, [.. TableProblem.Sorted(problems)]);
    }

    private static Answer<T> Find<T>(IReadOnlyDictionary<string, T> rows, string word, string id) => rows.TryGetValue(id.Trim(), out var found)
        ? Answer<T>.Given(found)
        : Unknown<T>(word, id, rows.Keys);

    private static Answer<T> Unknown<T>(string word, string text, IEnumerable<string> known)
    {
        var near = NearestNames.Of(text.Trim(), known);
        var words = word.Replace('-', ' ');
        return Answer<T>.Refused(
            $"unknown-{word}",
            $"\"{(text.Length > 64 ? text[..64] + "…" : text)}\" is not a known {words}.",
            near.Count > 0 ? $"Did you mean {string.Join(" or ", near)}?" : $"Choose a {words} from the list of known ones.");
    }

    private static IReadOnlyDictionary<string, T> ById<T>(IEnumerable<T> rows, Func<T, string> id)
    {
        var ordered = new OrderedDictionary<string, T>(StringComparer.Ordinal);
        foreach (var row in rows)
        {
            ordered.Add(id(row), row);
        }
        return new ReadOnlyDictionary<string, T>(ordered);
    }
}
