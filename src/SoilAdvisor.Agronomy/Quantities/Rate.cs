namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// Mass of one form of a nutrient on an area of ground. Zero by default; always finite. Rates of different forms do not add: that is a
/// compile error. Element and oxide meet only in a named formula (<see cref="OxideConversions"/>).
/// </summary>
/// <typeparam name="TForm">The form counted.</typeparam>
/// <param name="Amount">The mass per area.</param>
public readonly record struct Rate<TForm>(MassPerArea Amount) : IComparable<Rate<TForm>>
    where TForm : IForm
{
    /// <summary>Pounds of the form per acre.</summary>
    public double PoundsPerAcre => Amount.PoundsPerAcre;

    /// <summary>From pounds of the form per acre.</summary>
    /// <param name="value">Pounds per acre.</param>
    public static Rate<TForm> FromPoundsPerAcre(double value) => new(MassPerArea.FromPoundsPerAcre(value));

    /// <inheritdoc/>
    public int CompareTo(Rate<TForm> other) => Amount.CompareTo(other.Amount);

    /// <summary>Sum.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static Rate<TForm> operator +(Rate<TForm> a, Rate<TForm> b) => new(a.Amount + b.Amount);

    /// <summary>Difference; may be negative.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static Rate<TForm> operator -(Rate<TForm> a, Rate<TForm> b) => new(a.Amount - b.Amount);

    /// <summary>Multiple.</summary>
    /// <param name="a">The rate.</param>
    /// <param name="factor">Pure number.</param>
    public static Rate<TForm> operator *(Rate<TForm> a, double factor) => new(a.Amount * factor);

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator <(Rate<TForm> a, Rate<TForm> b) => a.CompareTo(b) < 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator >(Rate<TForm> a, Rate<TForm> b) => a.CompareTo(b) > 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator <=(Rate<TForm> a, Rate<TForm> b) => a.CompareTo(b) <= 0;

    /// <summary>Order.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static bool operator >=(Rate<TForm> a, Rate<TForm> b) => a.CompareTo(b) >= 0;
}
