using SoilAdvisor.Agronomy.Cations;

namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>A buffer whose published acidity counts on one basis, mass or volume of soil, and never on the other.</summary>
/// <typeparam name="TBasis">The basis.</typeparam>
public interface IBufferOn<TBasis> : IBuffer
    where TBasis : ISoilBasis;
