namespace SoilAdvisor.Agronomy.SoilTests;

/// <summary>What a number counts. Default is the element, as soil tests report.</summary>
public enum Basis
{
    /// <summary>The element, for example P.</summary>
    Element,

    /// <summary>Its oxide, for example P2O5.</summary>
    Oxide,
}
