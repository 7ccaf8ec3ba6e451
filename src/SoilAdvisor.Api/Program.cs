using SoilAdvisor.Api;
using SoilAdvisor.ReferenceTables;

if (args is [HealthProbe.Option, var address])
{
    return await HealthProbe.Ask(address);
}

try
{
    await SoilAdvisor.Api.Host.Build(args).RunAsync();
    return Exit.Done;
}
catch (ReferenceTableException broken)
{
    // Every fault at once: the person who repairs a table should not have to start the service once a fault.
    foreach (var problem in broken.Problems)
    {
        await Console.Error.WriteLineAsync(problem.ToString());
    }

    await Console.Error.WriteLineAsync("The reference tables have faults, so the service did not start. Correct the lines above.");
    return Exit.Unavailable;
}
catch (IOException unavailable)
{
    await Console.Error.WriteLineAsync($"The service did not start: {unavailable.Message}");
    return Exit.Unavailable;
}
