namespace SoilAdvisor.Agronomy.Quantities;

/// <summary>
/// One mass per area for each <see cref="Nutrient"/>: what a material, a credit or a plan supplies. Immutable; all zero by default.
/// The one bridge between typed rates and the linear programme.
/// </summary>
public sealed class NutrientVector
{
    private static readonly int Count = Enum.GetValues<Nutrient>().Length;

    private readonly MassPerArea[] amounts;

    private NutrientVector(MassPerArea[] amounts) => this.amounts = amounts;

    /// <summary>Nothing of anything.</summary>
    public static NutrientVector Zero { get; } = new(new MassPerArea[Count]);

    /// <summary>The mass per area of one nutrient.</summary>
    /// <param name="nutrient">Which.</param>
    public MassPerArea this[Nutrient nutrient] => amounts[(int)nutrient];

    /// <summary>One nutrient as a typed rate.</summary>
    /// <typeparam name="TForm">The form.</typeparam>
    public Rate<TForm> Of<TForm>()
        where TForm : IBalancedForm => new(amounts[(int)TForm.Nutrient]);

    /// <summary>A copy with one nutrient replaced.</summary>
    /// <param name="nutrient">Which.</param>
    /// <param name="amount">Its new amount.</param>
    public NutrientVector With(Nutrient nutrient, MassPerArea amount)
    {
        var copy = (MassPerArea[])amounts.Clone();
        copy[(int)nutrient] = amount;
        return new NutrientVector(copy);
    }

    /// <summary>A copy with one typed rate replaced.</summary>
    /// <typeparam name="TForm">The form.</typeparam>
    /// <param name="rate">Its new rate.</param>
    public NutrientVector With<TForm>(Rate<TForm> rate)
        where TForm : IBalancedForm => With(TForm.Nutrient, rate.Amount);

    /// <summary>Sum, nutrient by nutrient.</summary>
    /// <param name="a">First.</param>
    /// <param name="b">Second.</param>
    public static NutrientVector operator +(NutrientVector a, NutrientVector b)
    {
        var sum = new MassPerArea[Count];
        for (var i = 0; i < Count; i++)
        {
            sum[i] = a.amounts[i] + b.amounts[i];
        }

        return new NutrientVector(sum);
    }

    /// <summary>Multiple, nutrient by nutrient.</summary>
    /// <param name="a">The vector.</param>
    /// <param name="factor">Pure number.</param>
    public static NutrientVector operator *(NutrientVector a, double factor)
    {
        var product = new MassPerArea[Count];
        for (var i = 0; i < Count; i++)
        {
            product[i] = a.amounts[i] * factor;
        }

        return new NutrientVector(product);
    }
}
