using SoilAdvisor.Cli.Files;

namespace SoilAdvisor.Cli.Tests.Files;

/// <summary>From a pointer of the service to the user's own files.</summary>
public sealed class PlacesTests
{
    [Fact]
    public void The_nearest_noted_part_names_the_place()
    {
        var places = new Places();
        places.Note("/beds/1", "beds.csv line 3");
        places.Note("/beds/1/crops", "beds.csv line 3, column \"crops\"");
        Assert.Equal("beds.csv line 3, column \"crops\"", places.Of("/beds/1/crops/0/crop"));
        Assert.Equal("beds.csv line 3", places.Of("/beds/1/area"));
        Assert.Equal("/beds/10/area", places.Of("/beds/10/area"));
    }

    [Fact]
    public void A_part_that_is_a_document_of_its_own_keeps_the_rest_of_the_pointer()
    {
        var places = new Places();
        places.NoteDocument("/beds", "beds.json");
        Assert.Equal("beds.json at /3/crops/0", places.Of("/beds/3/crops/0"));
    }

    [Fact]
    public void A_whole_request_file_keeps_the_whole_pointer()
    {
        var places = new Places();
        places.NoteDocument("", "request.json");
        places.Note("/guide", "--guide");
        Assert.Equal("request.json at /beds/3", places.Of("/beds/3"));
        Assert.Equal("--guide", places.Of("/guide"));
    }

    [Fact]
    public void Lines_and_columns_of_a_lab_file_only_lack_its_name()
    {
        var places = new Places();
        places.NoteFile("lab.csv");
        Assert.Equal("lab.csv line 2, column 4", places.Of("line 2, column 4"));
    }
}
