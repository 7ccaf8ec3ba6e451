namespace SoilAdvisor.Agronomy.Acidity;

/// <summary>What a publication says of the pH for a crop: a target, a range to be in, or a floor. They are different types, so that none is read as another.</summary>
public abstract record PublishedPh
{
    private PublishedPh()
    {
    }

    /// <summary>The pH that a lime rate aims at; null for a floor, which is nothing to aim at.</summary>
    public abstract decimal? Aim { get; }

    /// <summary>The pH the lime rate aims at.</summary>
    /// <param name="Value">Target pH.</param>
    public sealed record Target(decimal Value) : PublishedPh
    {
        /// <inheritdoc/>
        public override decimal? Aim => Value;
    }

    /// <summary>A range to be in; its low end is aimed at, so that no more lime goes on than the range asks for.</summary>
    /// <param name="Low">Low end.</param>
    /// <param name="High">High end.</param>
    public sealed record Optimum(decimal Low, decimal High) : PublishedPh
    {
        /// <inheritdoc/>
        public override decimal? Aim => Low;
    }

    /// <summary>An optimum with the target printed beside it, a little above.</summary>
    /// <param name="Best">The optimum.</param>
    /// <param name="Printed">The target.</param>
    public sealed record OptimumAndTarget(decimal Best, decimal Printed) : PublishedPh
    {
        /// <inheritdoc/>
        public override decimal? Aim => Printed;
    }

    /// <summary>A floor: lime is advised below it.</summary>
    /// <param name="Value">pH.</param>
    public sealed record Floor(decimal Value) : PublishedPh
    {
        /// <inheritdoc/>
        public override decimal? Aim => null;
    }
}
