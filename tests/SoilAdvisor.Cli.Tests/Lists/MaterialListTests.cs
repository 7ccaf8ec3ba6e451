using System.Text;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Materials;

namespace SoilAdvisor.Cli.Tests.Lists;

/// <summary>What a list of materials becomes.</summary>
public sealed class MaterialListTests
{
    [Fact]
    public void A_price_carries_its_currency_and_what_it_buys_and_a_label_its_percents()
    {
        List<Complaint> complaints = [];
        var file = new InputFile("shelf.csv", Encoding.UTF8.GetBytes("material,price (USD),for (lb),on hand (lb),nitrogen (%),P2O5 (%),basis\nfeather-meal,48.00,50,100,13,,as-spread\nleaf-compost,,,3000,,,\n"));
        var materials = MaterialList.Read(file, new Places(), complaints)!.AsArray();
        Assert.Empty(complaints);
        Assert.Equal(
            """{"material":"feather-meal","price":{"value":"48.00","currency":"USD","per":{"value":"50","unit":"lb"}},"onHand":{"value":"100","unit":"lb"},"analysis":{"n":"13","basis":"as-spread"}}""",
            materials[0]!.ToJsonString());
        Assert.Equal("""{"material":"leaf-compost","onHand":{"value":"3000","unit":"lb"}}""", materials[1]!.ToJsonString());
    }

    [Fact]
    public void Where_a_material_is_from_and_its_largest_rate_are_passed_on()
    {
        List<Complaint> complaints = [];
        var file = new InputFile("shelf.csv", Encoding.UTF8.GetBytes("material,origin,most (ton/acre)\nleaf-compost,own,4\nfeather-meal,,\n"));
        var materials = MaterialList.Read(file, new Places(), complaints)!.AsArray();
        Assert.Empty(complaints);
        Assert.Equal("""{"material":"leaf-compost","origin":"own","most":{"value":"4","unit":"ton/acre"}}""", materials[0]!.ToJsonString());
        Assert.Equal("""{"material":"feather-meal"}""", materials[1]!.ToJsonString());
    }
}
