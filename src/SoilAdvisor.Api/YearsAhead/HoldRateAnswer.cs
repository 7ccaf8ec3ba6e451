using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.YearsAhead;

/// <summary>The yearly rate of a material at which soil phosphorus stops climbing, when nothing else brings phosphate.</summary>
internal sealed record HoldRateAnswer(
    string Material, string Name, Quantity Rate, QuantityRange Range, QuantityRange NitrogenAtThatRate, bool AboveLargestSingleRate, CitedAs By) : Sourced(By);
