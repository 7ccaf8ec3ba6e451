namespace SoilAdvisor.Api;

/// <summary>Asks a running service whether it is well: what a container calls, since its image holds no other client.</summary>
internal static class HealthProbe
{
    /// <summary>The option that asks instead of serving.</summary>
    public const string Option = "--health";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(2);

    /// <summary>Asks once.</summary>
    /// <param name="address">Address of the health page.</param>
    /// <returns><see cref="Exit.Done"/> when the service answers that it is well, else <see cref="Exit.Unavailable"/>.</returns>
    public static async Task<int> Ask(string address)
    {
        using var client = new HttpClient { Timeout = Patience };
        try
        {
            using var answer = await client.GetAsync(new Uri(address, UriKind.Absolute));
            return answer.IsSuccessStatusCode ? Exit.Done : Exit.Unavailable;
        }
        catch (Exception silent) when (silent is HttpRequestException or TaskCanceledException or UriFormatException)
        {
            return Exit.Unavailable;
        }
    }
}
