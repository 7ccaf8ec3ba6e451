using System.Text.Json.Nodes;
using SoilAdvisor.Cli.Connections;
using SoilAdvisor.Cli.Files;
using SoilAdvisor.Cli.Screens;

namespace SoilAdvisor.Cli.Verbs;

/// <summary>From a lab file and a bed list to a rate for every bed.</summary>
/// <param name="screen">Where it writes.</param>
internal sealed class PlanVerb(Screen screen) : ServiceVerb<PlanSettings, PlanFiles>(screen)
{
    /// <inheritdoc />
    protected override PlanFiles Read(PlanSettings settings, Errand errand) => PlanFiles.Read(settings, errand);

    /// <inheritdoc />
    protected override async Task<int> Ask(PlanSettings settings, PlanFiles files, Errand errand, Connection connection, CancellationToken stop)
    {
        var request = files.Whole;
        if (request is null)
        {
            var (soilTests, exit) = await LabReport.Read(files.LabFile!, errand, connection, stop);
            if (soilTests is null)
            {
                return exit;
            }

            request = new JsonObject { ["soilTests"] = soilTests, ["beds"] = files.Beds };
        }

        Overlay(request, settings, files, errand.Places);
        if (settings.HideAnswers)
        {
            return await WorkSheet.Ask($"v1/plans{settings.Query}", request, settings, errand, connection, stop);
        }

        return await Plan(request, settings, errand, connection, stop);
    }

    // The plan is asked for as JSON in any case: the exit code comes from it.
    private static async Task<int> Plan(JsonObject request, PlanSettings settings, Errand errand, Connection connection, CancellationToken stop)
    {
        var reply = await Ask("application/json");
        if (!reply.IsDone)
        {
            return errand.Refused(reply, settings.Strict);
        }

        var plan = reply.Json();
        if (settings.ChosenFormat == "table")
        {
            await errand.Deliver(paper => PlanScreen.Draw(paper, plan), stop);
            return PlanEnd.Say(plan, errand);
        }

        var report = settings.ChosenFormat == "json" ? reply : await Ask(settings.MediaType);
        if (!report.IsDone)
        {
            return errand.Refused(report, settings.Strict);
        }

        await errand.Deliver(report.Body, stop);
        return PlanEnd.Say(plan, errand);

        Task<Reply> Ask(string mediaType) => errand.Screen.During(
            "Working out the beds",
            () => Errand.Post(connection, $"v1/plans{settings.Query}", request, mediaType, stop));
    }

    /// <summary>What is typed on the command line goes before what stands in a request file.</summary>
    private static void Overlay(JsonObject request, PlanSettings settings, PlanFiles files, Places places)
    {
        if (files.Materials is not null)
        {
            request["materials"] = files.Materials;
        }

        Set("/farm", settings.Farm, "--farm");
        Set("/guide", settings.Guide, "--guide");
        Set("/region", settings.Region, "--region");
        Set("/subregion", settings.Subregion, "--subregion");
        Set("/options/date", settings.Date, "--date");
        Set("/options/years", settings.Years, "--years");
        Set("/options/limeMethod", settings.LimeMethod, "--lime-method");
        Set("/options/limits/productsPerBed", settings.ProductsPerBed, "--products-per-bed");
        Set("/options/limits/products", settings.Products, "--products");
        Set("/options/limits/seconds", settings.Seconds, "--seconds");
        SetAmount("/options/limits/smallestRate", settings.SmallestRate, "unit", "--smallest-rate");
        SetAmount("/options/limits/labourPerPass", settings.Labour, "currency", "--labour");
        Set("/options/metalRule", settings.MetalRule, "--metal-rule");
        SetAmount("/options/measures/bucket", settings.Bucket, "unit", "--bucket");
        SetAmount("/options/measures/scoop", settings.Scoop, "unit", "--scoop");
        SetAmount("/options/measures/scaleStep", settings.ScaleStep, "unit", "--scale-step");
        SetAmount("/options/measures/swath", settings.Swath, "unit", "--swath");
        SetAmount("/options/limits/budget", settings.Budget, "currency", "--budget");

        void Set(string pointer, string? value, string option) => SetNode(pointer, value is null ? null : JsonValue.Create(value), option);

        // "50 lb/acre": the number, a blank, the unit. What is missing the service asks for, in its own words.
        void SetAmount(string pointer, string? amount, string unit, string option)
        {
            var parts = amount?.Trim().Split(' ', 2, StringSplitOptions.TrimEntries);
            SetNode(pointer, parts is null ? null : new JsonObject { ["value"] = parts[0], [unit] = parts.Length > 1 ? parts[1] : null }, option);
            foreach (var member in parts is null ? [] : new[] { "value", unit })
            {
                places.Note($"{pointer}/{member}", option);
            }
        }

        void SetNode(string pointer, JsonNode? value, string option)
        {
            if (value is null)
            {
                return;
            }

            Members.Set(request, pointer, value);
            places.Note(pointer, option);
        }
    }
}
