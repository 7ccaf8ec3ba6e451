using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Tests.Screens;

/// <summary>Lines broken between words.</summary>
public sealed class WrappedTests
{
    [Theory]
    [InlineData("spread it now", 13, "spread it now")]
    [InlineData("spread it now", 12, "spread it\nnow")]
    [InlineData("a-very-long-id is kept whole", 6, "a-very-long-id\nis\nkept\nwhole")]
    [InlineData("  two \n lines ", 80, "two lines")]
    [InlineData("", 80, "")]
    public void A_line_ends_where_the_screen_does(string text, int width, string expected) => Assert.Equal(expected, Wrapped.Text(text, width));

    [Fact]
    public void Later_lines_hang_below_the_first_word() => Assert.Equal("  - spread\n    lime", Wrapped.Text("spread lime", 10, "  - "));

    [Fact]
    public void A_file_cannot_steer_the_terminal() => Assert.Equal("bed \uFFFD[2Jone", Wrapped.Text("bed \u001b[2Jone", 80));
}
