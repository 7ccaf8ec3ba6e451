using SoilAdvisor.Api.Answers;

namespace SoilAdvisor.Api.FieldWork;

/// <summary>One material carried to its beds in one go.</summary>
internal sealed record PassAnswer(int Order, string? SpreadBy, string Material, string Name, string? Dose, IReadOnlyList<string> Rules, Quantity Measured, IReadOnlyList<MeasuredAnswer> Beds, CitedAs By) : Sourced(By);
