using SoilAdvisor.Cli.Screens;
using SoilAdvisor.ReferenceTables;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>Checks reference tables, for whoever adds a guide.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class CheckVerb(Screen screen) : Command<CheckSettings>
{
    /// <inheritdoc />
    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        if (settings.Folder is { } named && !Directory.Exists(named))
        {
            screen.Say($"There is no folder {named}. Name the folder that holds the reference tables.");
            return ExitCode.BadInput;
        }

        var folder = settings.Folder ?? Tables.FindFolder(AppContext.BaseDirectory);
        var problems = Tables.Check(folder);
        foreach (var problem in problems)
        {
            Screen.WriteLine(problem.ToString());
        }

        screen.Say(problems.Count switch
        {
            0 => $"The tables in {folder} have no faults.",
            1 => "One fault. Correct it and check again.",
            var many => $"{many} faults. Correct them and check again.",
        });
        return problems.Count == 0 ? ExitCode.Done : ExitCode.Blocked;
    }
}
