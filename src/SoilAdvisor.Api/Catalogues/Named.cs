using SoilAdvisor.Api.Http;

namespace SoilAdvisor.Api.Catalogues;

/// <summary>Looks an id of the tables up and refuses an unknown one at its place, with the nearest names.</summary>
internal static class Named
{
    public static T? Read<T>(string? id, string pointer, Func<string, Answer<T>> lookUp, FaultList faults)
        where T : class
    {
        if (string.IsNullOrWhiteSpace(id) || faults.AnyWithin(pointer))
        {
            return null;
        }

        if (lookUp(id.Trim()).TryGet(out var found, out var reason))
        {
            return found;
        }

        faults.Add(pointer, reason);
        return null;
    }
}
