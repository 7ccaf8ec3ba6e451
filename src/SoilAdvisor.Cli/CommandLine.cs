using System.Globalization;
using SoilAdvisor.Agronomy.Working;
using SoilAdvisor.Api;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Screens;
using SoilAdvisor.Cli.Verbs;
using SoilAdvisor.ReferenceTables;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli;

/// <summary>The verbs and what happens when one of them cannot go on.</summary>
internal static class CommandLine
{
    private static readonly string[] VerbNames = ["plan", "rate", "lime", "cover", "season", "seed", "sample", "show", "work", "mistake", "check"];

    /// <summary>Runs the command.</summary>
    /// <param name="arguments">As typed.</param>
    /// <param name="screen">Where it writes.</param>
    /// <param name="stop">Stops it.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> Run(IReadOnlyList<string> arguments, Screen screen, CancellationToken stop)
    {
        try
        {
            return await Verbs(screen).RunAsync(arguments, stop);
        }
        catch (CommandAppException fault)
        {
            screen.Say(fault.Message);
            if (NearestNames.Of(arguments.FirstOrDefault() ?? "", VerbNames) is [var nearest, ..] && !VerbNames.Contains(arguments[0]))
            {
                screen.Say($"Did you mean \"{Product.Command} {nearest}\"?");
            }

            screen.Say($"\"{Product.Command} --help\" lists the verbs, \"{Product.Command} VERB --help\" the options of one with examples.");
            return ExitCode.BadInput;
        }
        catch (NoServiceException fault)
        {
            screen.Say(fault.Message);
            screen.Say($"Check the address, or leave out --server: then {Product.Command} works on its own.");
            return ExitCode.Unavailable;
        }
        catch (ReferenceTableException broken)
        {
            screen.Say("The reference tables have faults, so nothing was calculated:");
            screen.SayEach(broken.Problems.Select(p => p.ToString()));
            return ExitCode.Unavailable;
        }
        catch (DirectoryNotFoundException missing)
        {
            screen.Say(missing.Message);
            return ExitCode.Unavailable;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            screen.Say($"{fault.Message} Nothing was written.");
            return ExitCode.BadInput;
        }
        catch (OperationCanceledException) when (stop.IsCancellationRequested)
        {
            screen.Say("Stopped. Nothing was written.");
            return ExitCode.Stopped;
        }
    }

    private static CommandApp Verbs(Screen screen)
    {
        var app = new CommandApp();
        app.Configure(verbs =>
        {
            verbs.Settings.Registrar.RegisterInstance(screen);
            verbs.ConfigureConsole(screen.Results);
            verbs.SetApplicationName(Product.Command);
            verbs.SetApplicationVersion(Product.EngineVersion);
            verbs.SetApplicationCulture(CultureInfo.InvariantCulture);
            verbs.UseStrictParsing();
            verbs.PropagateExceptions();
            verbs.AddCommand<PlanVerb>("plan")
                .WithDescription("From the laboratory's report to a rate for every bed.")
                .WithExample("plan", "docs/demo/lab.csv", "--beds", "docs/demo/beds.csv")
                .WithExample("plan", "lab.csv", "--beds", "beds.csv", "--materials", "shelf.csv")
                .WithExample("plan", "lab.csv", "--beds", "beds.csv", "-o", "plan.html")
                .WithExample("plan", "request.json", "--format", "json", "--strict");
            verbs.AddCommand<RateVerb>("rate")
                .WithDescription("Rate a soil test by a published guide.")
                .WithExample("rate", "docs/demo/lab.csv", "--region", "US-DE", "--working")
                .WithExample("rate", "docs/demo/lab.csv", "--guide", "delaware-vegetables")
                .WithExample("rate", "docs/demo/lab.csv", "--region", "US-DE", "--beside", "pennsylvania,new-jersey-vegetables")
                .WithExample("rate", "docs/demo/lab.csv", "--beside", "all");
            verbs.AddCommand<LimeVerb>("lime")
                .WithDescription("How much lime a soil test asks for, and which.")
                .WithExample("lime", "docs/demo/lab.csv", "--crop", "cabbage", "--working")
                .WithExample("lime", "docs/demo/lab.csv", "--target-ph", "6.5", "--area", "250")
                .WithExample("lime", "docs/demo/lab.csv", "--target-ph", "6.5", "--compare", "all");
            verbs.AddCommand<CoverVerb>("cover")
                .WithDescription("Cover crops that fit the time a bed stands free.")
                .WithExample("cover", "2027-07-05", "2027-08-25", "--for", "phosphorus,weeds")
                .WithExample("cover", "2027-08-25", "2027-10-15", "--first-frost", "10-20", "--before", "onion");
            verbs.AddCommand<SeasonVerb>("season")
                .WithDescription("Which cover crop to grow when on every bed, the seed to buy, and a calendar.")
                .WithExample("season", "docs/demo/beds.csv", "--first-frost", "2027-10-20")
                .WithExample("season", "docs/demo/beds.csv", "--first-frost", "2027-10-20", "--species", "2", "-o", "season.ics");
            verbs.AddCommand<SeedVerb>("seed")
                .WithDescription("Seed of a cover crop or a mixture to weigh out, by pure live seed.")
                .WithExample("seed", "buckwheat", "--area", "250")
                .WithExample("seed", "oats=50", "field-pea=50", "--area", "250", "--sow", "drilled", "--tag", "oats=98/90");
            verbs.AddCommand<SampleVerb>("sample")
                .WithDescription("How many cores to take, and which results have really changed between two reports.")
                .WithExample("sample", "--analyte", "P", "--precision", "20", "--confidence", "90")
                .WithExample("sample", "--before", "docs/demo/lab-2024.csv", "--after", "docs/demo/lab.csv");
            verbs.AddCommand<ShowVerb>("show")
                .WithDescription("List what is known: guides, crops, materials, cover crops, lime methods, rules, sources, formulas, common mistakes.")
                .WithExample("show", "guides")
                .WithExample("show", "materials", "feather-meal");
            verbs.AddCommand<WorkVerb>("work")
                .WithDescription("Work one formula with numbers of your own.")
                .WithExample("show", "formulas")
                .WithExample("work", "acidity-mehlich", "--with", "k=4", "--with", "S=6.6", "--with", "BpH=6.2")
                .WithExample("work", "cover-crop-plant-available-nitrogen", "--with", "n=3.5", "--vary", "n=1.5..4", "--steps", "6")
                .WithExample("work", "moisture-by-drying", "--with", "W=10", "--with", "D=2.3", "--hide-answers");
            verbs.AddCommand<MistakeVerb>("mistake")
                .WithDescription("Work a common mistake beside the right way, and see the size of the error.")
                .WithExample("show", "mistakes")
                .WithExample("mistake", "element-for-oxide", "--with", "P=20");
            verbs.AddCommand<CheckVerb>("check")
                .WithDescription("Check a folder of reference tables and print every fault with file and line.")
                .WithExample("check")
                .WithExample("check", "reference-tables");
        });
        return app;
    }
}
