using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Reports.Paper;

/// <summary>
/// One piece of a report: what is said and where it stands, without any markup. Only the writers encode text, so user text cannot slip
/// past them.
/// </summary>
internal abstract record Block
{
    /// <summary>Citations in reading order.</summary>
    public abstract IEnumerable<Citation> Citations { get; }
}
