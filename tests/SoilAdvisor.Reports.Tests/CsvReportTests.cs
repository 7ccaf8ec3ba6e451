namespace SoilAdvisor.Reports.Tests;

public sealed class CsvReportTests
{
    private static readonly string Text = CsvReport.Write(InventedPlan.Plan(), InventedPlan.Bibliography);
    private static readonly IReadOnlyList<IReadOnlyList<string>> Rows = Csv.Read(Text);

    [Fact]
    public void The_header_is_the_list_of_columns() => Assert.Equal(CsvReport.Columns, Rows[0]);

    [Fact]
    public void There_is_one_row_a_bed_and_material_and_no_bed_is_lost()
    {
        Assert.Equal(["1A", "1A", "1A", "1A", "1B", "2 | low end"], Rows.Skip(1).Select(r => Cell(r, "bed")));
        Assert.Equal(["invented-stone", "invented-stone", "invented-meal", "invented-dust", "", ""], Rows.Skip(1).Select(r => Cell(r, "material")));
        Assert.Equal(["1", "2", "3", "4", "", ""], Rows.Skip(1).Select(r => Cell(r, "order")));
        Assert.Equal(["partly", "partly", "partly", "partly", "planned", "refused"], Rows.Skip(1).Select(r => Cell(r, "state")));
    }

    [Fact]
    public void Lines_end_as_the_standard_asks() // RFC 4180, section 2, rule 1
    {
        Assert.EndsWith("\r\n", Text);
        Assert.Equal(Rows.Count, Text.Split("\r\n").Length - 1);
        Assert.DoesNotContain('\n', Text.Replace("\r\n", ""));
    }

    // 958.32 lb/acre on 250 sq ft: 958.32 × 250 / 43560 = 5.5 lb; × 0.45359237 = 2.494758 kg; 958.32 / 43.56 = 22 lb on 1000 sq ft.
    [Fact]
    public void Both_systems_of_units_stand_side_by_side()
    {
        var meal = Rows[3];

        Assert.Equal("5.5", Cell(meal, "weight_lb"));
        Assert.Equal("2.494758", Cell(meal, "weight_kg"));
        Assert.Equal("958.32", Cell(meal, "rate_lb_per_acre"));
        Assert.Equal("22", Cell(meal, "rate_lb_per_1000_sq_ft"));
        Assert.Equal("250", Cell(meal, "area_sq_ft"));
        Assert.Equal("12.10", Cell(meal, "cost"));
        Assert.Equal("2027-04-20", Cell(meal, "spread_by"));
    }

    [Fact]
    public void Every_row_with_a_weight_names_its_sources() =>
        Assert.All(Rows.Skip(1).Where(r => Cell(r, "weight_lb").Length > 0), r => Assert.Contains("Arithmetic on values", Cell(r, "sources")));

    [Fact]
    public void The_doses_of_lime_add_up_to_the_whole()
    {
        var doses = Rows.Where(r => Cell(r, "material") == "invented-stone").ToList();

        Assert.Equal(4210.53, doses.Sum(r => Number(r, "rate_lb_per_acre")), 2);
        Assert.Equal(4, doses.Sum(r => Number(r, "volume")), 5);
    }

    private static string Cell(IReadOnlyList<string> row, string column) => row[CsvReport.Columns.ToList().IndexOf(column)];

    private static double Number(IReadOnlyList<string> row, string column) => double.Parse(Cell(row, column), System.Globalization.CultureInfo.InvariantCulture);
}
