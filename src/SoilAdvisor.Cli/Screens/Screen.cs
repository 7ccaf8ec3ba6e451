using System.Globalization;
using System.Text;
using Spectre.Console;

namespace SoilAdvisor.Cli.Screens;

/// <summary>Where the command writes: results to standard output, everything else to standard error.</summary>
internal sealed class Screen
{
    // Plain text is often put on paper or into a mail: 80 columns fit both.
    private const int PaperWidth = 80;
    private const int Unbroken = 100_000;

    private Screen(IAnsiConsole results, IAnsiConsole talk, bool talkIsTerminal) =>
        (Results, Talk, TalkIsTerminal) = (results, talk, talkIsTerminal);

    /// <summary>Results.</summary>
    public IAnsiConsole Results { get; }

    /// <summary>Complaints, notes and progress.</summary>
    public IAnsiConsole Talk { get; }

    /// <summary>Whether somebody watches the talk, so that progress is worth showing.</summary>
    public bool TalkIsTerminal { get; }

    /// <summary>The screen of the process.</summary>
    public static Screen OfConsole()
    {
        Console.OutputEncoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Screen(
            Drawing(Console.Out, Console.IsOutputRedirected, AskedWidth() ?? PaperWidth),
            // Nobody's window breaks redirected talk; long lines are easier to search.
            Drawing(Console.Error, Console.IsErrorRedirected, Unbroken),
            !Console.IsErrorRedirected);
    }

    /// <summary>Writes one line of a result, however long: lines with file and number are read by other programs too.</summary>
    public static void WriteLine(string line) => Console.Out.WriteLine(Wrapped.Visible(line));

    /// <summary>Says one thing on standard error.</summary>
    public void Say(string words) => Talk.WriteLine(Wrapped.Visible(words));

    /// <summary>Says several things on standard error, each indented.</summary>
    public void SayEach(IEnumerable<string> words)
    {
        foreach (var line in words)
        {
            Say($"  {line}");
        }
    }

    /// <summary>Says what has to be corrected, once each.</summary>
    public void Say(string heading, IEnumerable<Complaint> complaints)
    {
        Say(heading);
        foreach (var complaint in complaints.Distinct())
        {
            var code = complaint.Code is null ? "" : $" [{complaint.Code}]";
            Say($"  {complaint.Where}: {complaint.Message}{code}");
            if (complaint.Suggestion.Length > 0)
            {
                Say($"    What to do: {complaint.Suggestion}");
            }
        }
    }

    /// <summary>Shows on a terminal that work goes on.</summary>
    /// <param name="words">What is done.</param>
    /// <param name="work">The work.</param>
    public Task<T> During<T>(string words, Func<Task<T>> work) =>
        TalkIsTerminal ? Talk.Status().Spinner(Spinner.Known.Line).SpinnerStyle(Style.Plain).StartAsync(Markup.Escape(words), _ => work()) : work();

    /// <summary>What a drawing looks like as plain text.</summary>
    public static string Plain(Action<IAnsiConsole> draw)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        draw(Drawing(text, plain: true, AskedWidth() ?? PaperWidth));
        return text.ToString();
    }

    /// <summary>Writes bytes to standard output as they are.</summary>
    public static async Task Pass(ReadOnlyMemory<byte> content, CancellationToken stop)
    {
        await using var output = Console.OpenStandardOutput();
        await output.WriteAsync(content, stop);
    }

    private static IAnsiConsole Drawing(TextWriter writer, bool plain, int plainWidth)
    {
        var styled = !plain && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = styled ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = styled ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = plain ? InteractionSupport.No : InteractionSupport.Detect,
            Out = new AnsiConsoleOutput(writer),
        });
        if (plain)
        {
            console.Profile.Width = plainWidth;
        }

        return console;
    }

    private static int? AskedWidth() =>
        int.TryParse(Environment.GetEnvironmentVariable("COLUMNS"), CultureInfo.InvariantCulture, out var columns) && columns is >= 40 and <= 400 ? columns : null;
}
