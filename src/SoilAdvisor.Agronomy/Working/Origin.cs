namespace SoilAdvisor.Agronomy.Working;

/// <summary>Where an input of a line comes from: given by the user, cited from a table, or computed on an earlier line.</summary>
public abstract record Origin
{
    private Origin()
    {
    }

    /// <summary>Nobody said. Only a catalogue call without context produces it.</summary>
    public static Origin Unstated { get; } = new GivenBy("the request");

    /// <summary>Given by the user or the laboratory.</summary>
    /// <param name="where">Report line or question answered.</param>
    public static Origin Given(string where) => new GivenBy(where);

    /// <summary>Read from a table.</summary>
    /// <param name="source">The citation.</param>
    public static Origin From(Citation source) => new CitedFrom(source);

    /// <summary>Result of an earlier line.</summary>
    /// <param name="line">Number of that line; 0 when no working is kept.</param>
    public static Origin Line(int line) => new ComputedOn(line);

    /// <summary>Given by the user or the laboratory.</summary>
    /// <param name="Where">Report line or question answered.</param>
    public sealed record GivenBy(string Where) : Origin;

    /// <summary>Read from a table.</summary>
    /// <param name="Source">The citation.</param>
    public sealed record CitedFrom(Citation Source) : Origin;

    /// <summary>Computed on an earlier line.</summary>
    /// <param name="Number">That line's number.</param>
    public sealed record ComputedOn(int Number) : Origin;
}
