using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.FieldWork;

/// <summary>The one check that a plan proposes.</summary>
/// <param name="Kind">Which check.</param>
/// <param name="Bed">Id of the bed it is made on.</param>
/// <param name="What">What to do, in sentences.</param>
/// <param name="Why">Why this one, in a sentence.</param>
/// <param name="From">First day; null where none can be said.</param>
/// <param name="To">Last day; null where none can be said.</param>
/// <param name="Source">Where the check stands.</param>
public sealed record ProposedCheck(ProposedCheckKind Kind, string Bed, string What, string Why, DateOnly? From, DateOnly? To, Citation Source);
