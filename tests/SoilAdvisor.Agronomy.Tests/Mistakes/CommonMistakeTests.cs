using SoilAdvisor.Agronomy.Mistakes;
using SoilAdvisor.Agronomy.Working;

namespace SoilAdvisor.Agronomy.Tests.Mistakes;

public sealed class CommonMistakeTests
{
    [Theory]
    // 20 × 2.291335 = 45.83.
    [InlineData("element-for-oxide", "P=20", 45.8267, 20)]
    // 18 × 1.33 × 6.67 × 0.2266135.
    [InlineData("ppm-as-pounds", "c=18,D=1.33,d=6.67", 36.1856, 18)]
    [InlineData("path-as-bed", "L=100,W=2.5,C=4", 250, 400)]
    // (40 + 50) lb carbon over (2 + 0.5) lb nitrogen; (100 × 20 + 100 × 100) / 200.
    [InlineData("averaged-ratios", "Q1=100,C1=40,N1=2,M1=0,Q2=100,C2=50,N2=0.5,M2=0", 36, 60)]
    // University of Kentucky: 2,500 lb on total nitrogen; at a quarter available four times that.
    [InlineData("total-for-available", "N=80,t=3.2,f=0.25", 10000, 2500)]
    [InlineData("dry-as-spread", "d=1.5,w=45", 0.825, 1.5)]
    public void A_mistake_is_worked_beside_the_right_way(string id, string numbers, double right, double mistaken)
    {
        var sheet = new WorkingSheet();
        var size = Of(id).Work(Read(numbers), sheet).Value;

        Assert.Equal((right, mistaken), (Math.Round(size.Right, 4), Math.Round(size.Mistaken, 4)));
        Assert.Equal((mistaken - right) / right * 100, size.Percent!.Value, 1e-3);
        Assert.Equal(["The right way", "With the mistake"], sheet.Lines.Select(l => l.Section));
    }

    [Fact]
    public void A_symbol_that_neither_way_takes_is_refused() =>
        Assert.Contains("\"x\"", Of("element-for-oxide").Work(Read("P=20,x=1")).Reason.Message, StringComparison.Ordinal);

    [Fact]
    public void A_number_that_only_the_mistake_takes_is_asked_for() =>
        Assert.Contains("C (", Of("path-as-bed").Work(Read("L=100,W=2.5")).Reason.Message, StringComparison.Ordinal);

    [Fact]
    public void Every_right_way_stands_in_the_catalogue_and_no_mistaken_one_does()
    {
        Assert.All(CommonMistakes.All, m => Assert.Contains(m.Right, Formulas.All));
        Assert.All(CommonMistakes.All, m => Assert.DoesNotContain(Formulas.All, f => f.Id == m.Mistaken.Id));
        Assert.All(CommonMistakes.All, m => Assert.Equal(m.Right.Result, m.Mistaken.Result));
    }

    private static CommonMistake Of(string id) => CommonMistakes.All.Single(m => m.Id == id);

    private static Dictionary<string, double> Read(string numbers) =>
        numbers.Split(',').Select(n => n.Split('=')).ToDictionary(n => n[0], n => double.Parse(n[1], System.Globalization.CultureInfo.InvariantCulture));
}
