namespace SoilAdvisor.Api.Contract;

/// <summary>Names of the document's schemas: the type's name, with its part where it is generic.</summary>
internal static class SchemaNames
{
    public static string Of(Type type)
    {
        var name = type.Name.Split('`')[0];
        return type.IsGenericType ? string.Concat(type.GetGenericArguments().Select(Of)) + name : name;
    }
}
