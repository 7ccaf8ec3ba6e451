namespace SoilAdvisor.Api.Climate;

/// <summary>Degree-days by one method.</summary>
internal sealed record MethodSum(string Method, decimal Value);
