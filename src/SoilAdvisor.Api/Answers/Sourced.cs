using System.Text.Json.Serialization;

namespace SoilAdvisor.Api.Answers;

/// <summary>Part of an answer that carries numbers: it names where they stand. The id is listed under "sources".</summary>
internal abstract record Sourced([property: JsonIgnore] CitedAs By)
{
    /// <summary>Id of the source.</summary>
    public string Source => By.Source;

    /// <summary>Table, page or equation.</summary>
    public string? Locator => By.Locator;

    /// <summary>seen, from-memory, common-practice or ours.</summary>
    public string Evidence => By.Evidence;
}
