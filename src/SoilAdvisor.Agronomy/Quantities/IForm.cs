namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>A form in which a nutrient is counted: element or oxide, total or available.</summary>
public interface IForm
{
    /// <summary>Symbol of the trade, for example P2O5.</summary>
    static abstract string Symbol { get; }
}
