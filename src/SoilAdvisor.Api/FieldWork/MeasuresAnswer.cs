using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>What is measured and spread with.</summary>
internal sealed record MeasuresAnswer(Quantity Bucket, Quantity? Scoop, Quantity? ScaleStep, Quantity Strip, Quantity Swath, CitedAs By) : Sourced(By);
