using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>A verb that reads its files first, then asks the service.</summary>
/// <typeparam name="TSettings">Its options.</typeparam>
/// <typeparam name="TInput">What it read.</typeparam>
/// <param name="screen">Where it writes.</param>
internal abstract class ServiceVerb<TSettings, TInput>(Screen screen) : AsyncCommand<TSettings>
    where TSettings : ServiceSettings
{
    /// <inheritdoc />
    public override async Task<int> ExecuteAsync(CommandContext context, TSettings settings, CancellationToken cancellationToken)
    {
        var errand = new Errand(screen, settings);
        var input = Read(settings, errand);
        errand.CheckOutput();
        if (errand.Complaints.Count > 0)
        {
            return errand.BadInput();
        }

        await using var connection = await screen.During("Reading the reference tables", () => Connection.Open(settings.ServerAddress, cancellationToken));
        return await Ask(settings, input, errand, connection, cancellationToken);
    }

    /// <summary>Reads what the verb needs; what cannot be read goes to the complaints, and then the service is not asked.</summary>
    protected abstract TInput Read(TSettings settings, Errand errand);

    /// <summary>Asks the service and delivers its answer.</summary>
    protected abstract Task<int> Ask(TSettings settings, TInput input, Errand errand, Connection connection, CancellationToken stop);
}
