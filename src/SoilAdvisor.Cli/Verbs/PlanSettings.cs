using System.ComponentModel;
using Spectre.Console.Cli;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>What the verb plan takes.</summary>
internal sealed class PlanSettings : CalculationSettings
{
    [CommandArgument(0, "<LABFILE>")]
    [Description("What the laboratory reported: CSV or JSON (docs/lab-file.md). Or a whole plan request as JSON (docs/api.md).")]
    public string LabFile { get; init; } = "";

    [CommandOption("--beds <FILE>")]
    [Description("The beds and what grows on them next: CSV or JSON (docs/bed-list.md).")]
    public string? Beds { get; init; }

    [CommandOption("--materials <FILE>")]
    [Description("The materials you can use, with their prices: CSV or JSON (docs/bed-list.md).")]
    public string? Materials { get; init; }

    [CommandOption("--farm <NAME>")]
    [Description("Name to print over the plan.")]
    public string? Farm { get; init; }

    [CommandOption("--date <DATE>")]
    [Description("Day the plan is made for, for example 2027-03-01. Without it, today.")]
    public string? Date { get; init; }

    [CommandOption("--lime-method <METHOD>")]
    [Description("Published lime method. Without it, one made for the buffer that the laboratory used; \"soil show lime-methods\" lists them.")]
    public string? LimeMethod { get; init; }

    [CommandOption("--years <NUMBER>")]
    [Description("Years to look ahead at phosphorus and potassium, 1 to 20. Without it, 5 where a test does not stand in its target.")]
    public string? Years { get; init; }

    [CommandOption("--subregion <PART>")]
    [Description("Part of the guide's region, where its limits depend on it, for example \"Coastal Plain\".")]
    public string? Subregion { get; init; }

    [CommandOption("--products-per-bed <NUMBER>")]
    [Description("Most materials on one bed. Without it, no limit.")]
    public string? ProductsPerBed { get; init; }

    [CommandOption("--products <NUMBER>")]
    [Description("Most materials on the whole farm. Without it, no limit.")]
    public string? Products { get; init; }

    [CommandOption("--smallest-rate <AMOUNT>")]
    [Description("Least that you can spread evenly, with its unit, for example \"50 lb/acre\".")]
    public string? SmallestRate { get; init; }

    [CommandOption("--labour <AMOUNT>")]
    [Description("What it costs you to carry one material to one bed once, for example \"1.50 USD\".")]
    public string? Labour { get; init; }

    [CommandOption("--budget <AMOUNT>")]
    [Description("Most that materials, delivery and labour may cost, for example \"400 USD\".")]
    public string? Budget { get; init; }

    [CommandOption("--metal-rule <RULE>")]
    [Description("Rule that tested metals of your materials are held against, for example us-maryland-compost. Without it, none.")]
    public string? MetalRule { get; init; }

    [CommandOption("--bucket <AMOUNT>")]
    [Description("Your bucket, level full, for example \"5 gal\". Without it, 5 gal.")]
    public string? Bucket { get; init; }

    [CommandOption("--scoop <AMOUNT>")]
    [Description("Your scoop, level full, for example \"1 quart\". Without it, small amounts are weighed.")]
    public string? Scoop { get; init; }

    [CommandOption("--scale-step <AMOUNT>")]
    [Description("Smallest step of your scale, for example \"0.25 lb\".")]
    public string? ScaleStep { get; init; }

    [CommandOption("--swath <AMOUNT>")]
    [Description("Width that one pass of your spreader or hand covers, for example \"4 ft\".")]
    public string? Swath { get; init; }

    [CommandOption("--seconds <NUMBER>")]
    [Description("Longest time for the search, 1 to 30. Without it, 10.")]
    public string? Seconds { get; init; }

    internal override IReadOnlyList<string> Formats => HideAnswers ? ["table", "markdown", "html", "json"] : ["table", "markdown", "html", "csv", "json"];
}
