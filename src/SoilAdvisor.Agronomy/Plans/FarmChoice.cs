using SoilAdvisor.Agronomy.Materials;

namespace SoilAdvisor.Agronomy.Plans;

/// <summary>How the materials of a farm were chosen, and what the choice costs to carry out.</summary>
/// <param name="DifferentNeeds">Groups of beds with the same need; the beds of a group get the same treatment.</param>
/// <param name="Products">Materials spread, lime aside.</param>
/// <param name="Passes">Times that a material is carried to a bed, lime aside.</param>
/// <param name="Gap">Share, 0 to 1, by which a better plan could still lie below this one: proven. 0 is proven best.</param>
/// <param name="Ended">How the search ended, in a plain sentence.</param>
/// <param name="Bought">What is paid for materials, lime included, in whole packs where they are sold so; null when nothing is priced.</param>
/// <param name="Freight">What is paid for deliveries; null when none was given.</param>
/// <param name="Labour">What the passes cost; null when no cost of a pass was given.</param>
/// <param name="ToPay">The three together; null when nothing is priced.</param>
public sealed record FarmChoice(int DifferentNeeds, int Products, int Passes, double Gap, string Ended, Money? Bought, Money? Freight, Money? Labour, Money? ToPay);
