using System.Text;
using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Beds;
using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Tests.Lists;

/// <summary>What a bed list becomes, and what is said about one that cannot be read.</summary>
public sealed class BedListTests
{
    private readonly List<Complaint> complaints = [];
    private readonly Places places = new();

    [Fact]
    public void Columns_become_members_with_the_unit_of_their_heading()
    {
        var bed = Read("bed,Length (ft),width (in),CENTER_SPACING (in),soil-test,crops\nA1,100,30,48,north,beet\n")[0]!;
        Assert.Equal(
            """{"id":"A1","length":{"value":"100","unit":"ft"},"width":{"value":"30","unit":"in"},"centerSpacing":{"value":"48","unit":"in"},"soilTest":"north","crops":[{"crop":"beet"}]}""",
            bed.ToJsonString());
    }

    [Fact]
    public void Crops_of_one_bed_keep_their_order_and_their_own_dates()
    {
        var bed = Read("bed,area (sq ft),soil test,crops,planting dates,first harvests\n1,250,n,pea; broccoli,2027-03-25; 2027-08-01,; 2027-09-30\n")[0]!;
        Assert.Equal(
            """[{"crop":"pea","plantingDate":"2027-03-25"},{"crop":"broccoli","plantingDate":"2027-08-01","firstHarvest":"2027-09-30"}]""",
            bed["crops"]!.ToJsonString());
    }

    [Fact]
    public void What_stood_before_and_what_was_spread_are_read()
    {
        var bed = Read("bed,area (sq ft),soil test,crops,previous crop,previous cover crop,cover crop killed,applied,applied amount (lb),applied date,worked in\n1,250,n,carrot,soybean,hairy-vetch,2027-05-20,dairy-fresh,250,2026-10-28,2026-10-29\n")[0]!;
        Assert.Equal("""[{"crop":"soybean"},{"coverCrop":"hairy-vetch","killed":"2027-05-20"}]""", bed["previous"]!.ToJsonString());
        Assert.Equal("""[{"material":"dairy-fresh","amount":{"value":"250","unit":"lb"},"date":"2026-10-28","incorporated":"2026-10-29"}]""", bed["applied"]!.ToJsonString());
    }

    [Theory]
    [InlineData("structure rate (ton/acre)", "5", """{"material":"yard-compost","rate":{"value":"5","unit":"ton/acre"}}""")]
    [InlineData("structure depth (in)", "0.5", """{"material":"yard-compost","depth":{"value":"0.5","unit":"in"}}""")]
    public void Compost_for_structure_is_read_by_rate_or_by_depth(string column, string cell, string read)
    {
        var bed = Read($"bed,area (sq ft),soil test,crops,structure material,{column}\n1,250,n,carrot,yard-compost,{cell}\n")[0]!;
        Assert.Equal(read, bed["structure"]!.ToJsonString());
    }

    [Fact]
    public void Remarks_and_empty_lines_are_passed_over_and_lines_still_counted()
    {
        Read("# a remark\nbed,area (sq ft),soil test,crops\n\n# another, with a comma\n1,250,n,carrot\n");
        Assert.Equal("beds.csv line 5, column \"crops\"", places.Of("/beds/0/crops/0/crop"));
        Assert.Equal("beds.csv line 5", places.Of("/beds/0/width"));
        Assert.Equal("beds.csv, heading \"area (sq ft)\"", places.Of("/beds/0/area/unit"));
    }

    [Fact]
    public void A_cell_in_quotes_may_hold_a_comma()
    {
        Assert.Equal("east, by the gate", (string?)Read("bed,area (sq ft),soil test,crops\n\"east, by the gate\",250,n,carrot\n")[0]!["id"]);
    }

    [Theory]
    [InlineData("bed,area (sq ft),soil test,crops\n1,2,5,n,carrot\n", "beds.csv line 2", "5 cells", "decimal is written with a point")]
    [InlineData("bed;area (sq ft);soil test;crops\n1;2,5;n;carrot\n", "beds.csv line 1", "semicolons", "comma separated")]
    [InlineData("bed,area,soil test,crops\n1,250,n,carrot\n", "beds.csv line 1, column 2 \"area\"", "unit is missing", "area (sq ft)")]
    [InlineData("bed,area (sq ft),soil test,crop\n1,250,n,carrot\n", "beds.csv line 1, column 4 \"crop\"", "not known", "\"crops\"")]
    [InlineData("bed,bed,area (sq ft),soil test,crops\n1,1,250,n,carrot\n", "beds.csv line 1, column 2 \"bed\"", "twice", "Leave one")]
    [InlineData("bed (name),area (sq ft),soil test,crops\n1,250,n,carrot\n", "beds.csv line 1, column 1 \"bed (name)\"", "no unit", "\"bed\"")]
    [InlineData("bed,area (sq ft),soil test,crops,planting dates\n1,250,n,pea; beet,2027-03-25\n", "beds.csv line 2, column \"planting dates\"", "1 entry", "one for each")]
    [InlineData("bed,area (sq ft),soil test,crops\n", "beds.csv", "no rows", "one line for each")]
    [InlineData("bed,area (sq ft),soil test,crops\n\"1,250,n,carrot\n", "beds.csv line", "double quote", "two double quotes")]
    public void A_fault_of_shape_names_its_place_and_what_to_do(string text, string where, string message, string suggestion)
    {
        BedList.Read(File(text), places, complaints);
        var complaint = Assert.Single(complaints);
        Assert.StartsWith(where, complaint.Where, StringComparison.Ordinal);
        Assert.Contains(message, complaint.Message, StringComparison.Ordinal);
        Assert.Contains(suggestion, complaint.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_utf_8_is_refused()
    {
        BedList.Read(new InputFile("beds.csv", [.. "bed,crops\n"u8, 0xE9, 0x0A]), places, complaints);
        Assert.Contains("UTF-8", Assert.Single(complaints).Message, StringComparison.Ordinal);
    }

    private static InputFile File(string text) => new("beds.csv", Encoding.UTF8.GetBytes(text));

    private JsonArray Read(string text)
    {
        var beds = BedList.Read(File(text), places, complaints);
        Assert.Empty(complaints);
        return beds!.AsArray();
    }
}
