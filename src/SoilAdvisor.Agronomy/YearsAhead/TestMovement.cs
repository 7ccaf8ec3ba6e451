using SoilAdvisor.Agronomy.Quantities;
using SoilAdvisor.Agronomy.SoilTests;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.YearsAhead;

/// <summary>
/// Pounds of one form of a nutrient that move a soil test by 1 mg/kg. It belongs to one extractant and moves no other: only
/// <see cref="TestMovements"/> makes one, and <see cref="Projections"/> asks for the extractant again.
/// </summary>
/// <typeparam name="TForm">The form counted: total P2O5 or K2O.</typeparam>
/// <param name="Extractant">The extractant.</param>
/// <param name="PoundsPerUnit">Pounds per acre for 1 mg/kg; above zero.</param>
/// <param name="BandFactor">Four soils in five are taken to lie between the pounds divided and multiplied by this; 1 or more.</param>
/// <param name="Source">Where the pounds stand.</param>
/// <param name="Assumptions">Where it was printed for another region or extractant, and what its band rests on.</param>
public sealed record TestMovement<TForm>(
    Extractant Extractant,
    Coefficient PoundsPerUnit,
    Coefficient BandFactor,
    Citation Source,
    IReadOnlyList<Assumption> Assumptions)
    where TForm : IBalancedForm;
