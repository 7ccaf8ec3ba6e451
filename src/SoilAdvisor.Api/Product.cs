using SoilAdvisor.Api.Answers;
using SoilAdvisor.ReferenceTables;

namespace SoilAdvisor.Api;

/// <summary>The product's and the command's names, in one place.</summary>
public static class Product
{
    /// <summary>Name of the product.</summary>
    public const string Name = "SoilAdvisor";

    /// <summary>Name of the command.</summary>
    public const string Command = "soil";

    /// <summary>Version of the HTTP contract: names stay within one.</summary>
    public const string ApiVersion = "v1";

    /// <summary>Version of the calculation.</summary>
    public static string EngineVersion { get; } = typeof(Citation).Assembly.GetName().Version?.ToString(3) ?? "0.0.0";

    internal static Versions Versions(Tables tables) => new(ApiVersion, tables.VersionId, EngineVersion);
}
