using SoilAdvisor.Cli;
using SoilAdvisor.Cli.Screens;

using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    pressed.Cancel = true;
    stop.Cancel();
};
return await CommandLine.Run(args, Screen.OfConsole(), stop.Token);
