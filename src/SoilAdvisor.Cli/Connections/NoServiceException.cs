namespace SoilAdvisor.Cli.Connections;

/// <summary>The service does not answer.</summary>
internal sealed class NoServiceException(string message) : Exception(message);
