namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>A form that has a place in the nutrient balance of a bed.</summary>
public interface IBalancedForm : IForm
{
    /// <summary>Its place.</summary>
    static abstract Nutrient Nutrient { get; }
}
