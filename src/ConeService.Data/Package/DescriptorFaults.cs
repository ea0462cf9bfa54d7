namespace ConeService.Data;

/// <summary>Collects what is wrong with one datapackage.json.</summary>
internal sealed class DescriptorFaults(string package, List<PackageFault> faults)
{
    public bool Any { get; private set; }

    /// <param name="field">Where in the descriptor, by names: <c>end-points.celsius.type</c>.</param>
    /// <param name="reason">What stands there and what is allowed.</param>
    /// <param name="line">Line, where the JSON itself is broken.</param>
    public void Add(string? field, string reason, int? line = null)
    {
        Any = true;
        faults.Add(new PackageFault(package, PackageDescriptor.FileName, line, field, FaultRules.Descriptor, reason));
    }

    /// <summary>The text, or a fault and an empty text when it is missing.</summary>
    public string Require(string? value, string field)
    {
        if (!string.IsNullOrWhiteSpace(value))
            return value;
        Add(field, "is missing; it must be a text");
        return "";
    }
}
