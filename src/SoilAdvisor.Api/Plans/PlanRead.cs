using SoilAdvisor.Planning;

namespace SoilAdvisor.Api.Plans;

/// <summary>A plan request as types, with the places of its beds and soil tests in the request.</summary>
internal sealed record PlanRead(FarmRequest Request, IReadOnlyList<int> BedIndexes, IReadOnlyDictionary<string, TestRead> Tests);
