namespace SoilAdvisor.ReferenceTables.Tests;

/// <summary>Finding a row by what a user types.</summary>
public sealed class LookupTests : IDisposable
{
    private readonly TableFolderCopy folder = TableFolderCopy.OfGood();

    private Tables Loaded => Tables.Load(folder.Path);

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("beet")]
    [InlineData("beetroot")]
    [InlineData(" Beetroot ")]
    [InlineData("BEET")]
    public void A_crop_is_found_by_id_or_other_name_in_any_case(string text) => Assert.Equal("beet", Loaded.Crop(text).Value.Id);

    [Fact]
    public void An_unknown_crop_is_refused_with_the_nearest_names()
    {
        var reason = Loaded.Crop("beets").Reason;

        Assert.Equal("unknown-crop", reason.Code);
        Assert.Contains("\"beets\"", reason.Message, StringComparison.Ordinal);
        Assert.Contains("beet", reason.Suggestion, StringComparison.Ordinal);
    }

    [Fact]
    public void A_long_text_is_not_repeated_in_full()
    {
        var reason = Loaded.Crop(new string('x', 10_000)).Reason;

        Assert.True(reason.Message.Length < 200);
        Assert.Equal("Choose a crop from the list of known ones.", reason.Suggestion);
    }

    [Fact]
    public void Every_other_kind_of_row_is_found_by_its_id_and_refused_under_its_own_code()
    {
        var tables = Loaded;

        Assert.Equal("feather-meal", tables.Material("feather-meal").Value.Id);
        Assert.Equal("buckwheat", tables.CoverCrop("buckwheat").Value.Id);
        Assert.Equal("example", tables.Guide("example").Value.Id);
        Assert.Equal("example-table", tables.LimeMethod("example-table").Value.Id);
        Assert.Equal("unknown-material", tables.Material("fether-meal").Reason.Code);
        Assert.Equal("Did you mean feather-meal?", tables.Material("fether-meal").Reason.Suggestion);
        Assert.Equal("unknown-cover-crop", tables.CoverCrop("?").Reason.Code);
        Assert.Equal("unknown-guide", tables.Guide("?").Reason.Code);
        Assert.Equal("unknown-lime-method", tables.LimeMethod("?").Reason.Code);
    }

    [Fact]
    public void Rows_are_walked_in_the_order_of_the_file() => Assert.Equal(["feather-meal", "wood-ash", "burnt-lime"], Loaded.Materials.Keys);

    [Fact]
    public void Values_cautions_and_aliases_meet_their_row()
    {
        var tables = Loaded;

        Assert.Equal(12m, tables.Materials["feather-meal"].ValueOf("total-nitrogen")!.Value);
        Assert.Equal("Wear a mask.", Assert.Single(tables.Materials["wood-ash"].Cautions).Text);
        Assert.Equal(["manure", "feather-meal"], tables.Materials["wood-ash"].NeverWith);
        Assert.Null(Assert.Single(tables.Crops["beet"].Removals).Ca);
        Assert.Null(tables.RateTables["example"].Splits[1].Rate);
    }
}
