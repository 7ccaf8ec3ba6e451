using System.Text.Json.Serialization;
using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Catalogues;
using SoilAdvisor.Api.Checks;
using SoilAdvisor.Api.Contract;
using SoilAdvisor.Api.CoverCrops;
using SoilAdvisor.Api.CoverSeason;
using SoilAdvisor.Api.Formulas;
using SoilAdvisor.Api.LabFiles;
using SoilAdvisor.Api.Lime;
using SoilAdvisor.Api.Mistakes;
using SoilAdvisor.Api.Plans;
using SoilAdvisor.Api.Ratings;
using SoilAdvisor.Api.Sampling;
using SoilAdvisor.Api.SeedRates;
using SoilAdvisor.Api.SoilTests;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.Http;

/// <summary>Every type that crosses the door, serialised by generated code.</summary>
[JsonSourceGenerationOptions(DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull)]
[JsonSerializable(typeof(Problem))]
[JsonSerializable(typeof(RatingsRequest))]
[JsonSerializable(typeof(RatingsAnswer))]
[JsonSerializable(typeof(LabFileRequest))]
[JsonSerializable(typeof(LabFileAnswer))]
[JsonSerializable(typeof(LimeRequest))]
[JsonSerializable(typeof(LimeAnswer))]
[JsonSerializable(typeof(CoverCropsRequest))]
[JsonSerializable(typeof(CoverCropsAnswer))]
[JsonSerializable(typeof(NitrogenRequest))]
[JsonSerializable(typeof(NitrogenAnswer))]
[JsonSerializable(typeof(SeedRequest))]
[JsonSerializable(typeof(SeedRateAnswer))]
[JsonSerializable(typeof(SeasonRequest))]
[JsonSerializable(typeof(SeasonAnswer))]
[JsonSerializable(typeof(CheckRequest))]
[JsonSerializable(typeof(CheckAnswer))]
[JsonSerializable(typeof(SamplingRequest))]
[JsonSerializable(typeof(SamplingAnswer))]
[JsonSerializable(typeof(FormulaRequest))]
[JsonSerializable(typeof(FormulaAnswer))]
[JsonSerializable(typeof(WorkSheetAnswer))]
[JsonSerializable(typeof(MistakeRequest))]
[JsonSerializable(typeof(MistakeAnswer))]
[JsonSerializable(typeof(CatalogueAnswer<MistakeEntry>))]
[JsonSerializable(typeof(EntryAnswer<MistakeEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<FormulaEntry>))]
[JsonSerializable(typeof(EntryAnswer<FormulaEntry>))]
[JsonSerializable(typeof(PlanRequest))]
[JsonSerializable(typeof(PlanAnswer))]
[JsonSerializable(typeof(HealthAnswer))]
[JsonSerializable(typeof(CatalogueAnswer<GuideEntry>))]
[JsonSerializable(typeof(EntryAnswer<GuideEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<CropEntry>))]
[JsonSerializable(typeof(EntryAnswer<CropEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<MaterialEntry>))]
[JsonSerializable(typeof(EntryAnswer<MaterialEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<CoverCropEntry>))]
[JsonSerializable(typeof(EntryAnswer<CoverCropEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<LimeMethodEntry>))]
[JsonSerializable(typeof(EntryAnswer<LimeMethodEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<MethodConversionEntry>))]
[JsonSerializable(typeof(EntryAnswer<MethodConversionEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<RuleEntry>))]
[JsonSerializable(typeof(EntryAnswer<RuleEntry>))]
[JsonSerializable(typeof(CatalogueAnswer<SourceAnswer>))]
[JsonSerializable(typeof(EntryAnswer<SourceAnswer>))]
[JsonSerializable(typeof(CatalogueAnswer<LimitEntry>))]
[JsonSerializable(typeof(EntryAnswer<LimitEntry>))]
internal sealed partial class WireTypes : JsonSerializerContext;
