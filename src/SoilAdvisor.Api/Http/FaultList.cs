namespace SoilAdvisor.Api.Http;

/// <summary>Faults and refusals of one request, in the order in which they were found.</summary>
internal sealed class FaultList
{
    private readonly List<Fault> faults = [];

    public int Count => faults.Count;

    public IReadOnlyList<Fault> All => faults;

    public void Add(Fault fault) => faults.Add(fault);

    public void Add(string pointer, Refusal refusal) => faults.Add(Fault.Of(pointer, refusal));

    public void Add(string pointer, string code, string message, string suggestion) => faults.Add(new Fault(pointer, code, message, suggestion));

    /// <summary>Whether anything at a place or below it is faulty.</summary>
    public bool AnyWithin(string pointer) => faults.Exists(f => PointerPath.IsWithin(f.Pointer, pointer));

    /// <summary>Whether a thing is faulty as a whole: at its place or in a part that is not one of its lists' entries.</summary>
    public bool HasFaultOfWhole(string pointer) => faults.Exists(f => PointerPath.IsWithin(f.Pointer, pointer) && !IsEntry(f.Pointer, pointer));

    private static bool IsEntry(string fault, string whole) => fault[whole.Length..].Split('/') is { Length: > 2 } parts && parts[2].All(char.IsAsciiDigit);
}
