namespace SoilAdvisor.Api;

/// <summary>The product's and the command's names, in one place.</summary>
public static class Product
{
    /// <summary>Name of the product.</summary>
    public const string Name = "SoilAdvisor";

    /// <summary>Name of the command.</summary>
    public const string Command = "soil";
}
