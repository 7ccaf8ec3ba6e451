using SoilAdvisor.Api.Answers;
using SoilAdvisor.Api.Working;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>A plan as it is carried out: passes in order, mixes, strips to set a spreader by, one check.</summary>
internal sealed record FieldWorkAnswer(
    MeasuresAnswer Measures,
    IReadOnlyList<PassAnswer> Passes,
    IReadOnlyList<MixAnswer> Mixes,
    IReadOnlyList<string> NotMixed,
    IReadOnlyList<StripAnswer> Strips,
    ProposedCheckAnswer? Check,
    IReadOnlyList<AssumptionAnswer> Assumptions,
    IReadOnlyList<WorkingLineAnswer>? Working);
