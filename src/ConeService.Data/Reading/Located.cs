namespace ConeService.Data;

/// <summary>A typed row and where it stands, for faults.</summary>
internal sealed record Located<T>(T Row, string Package, string File, int Line)
{
    public PackageFault Fault(string? field, string rule, string reason) => new(Package, File, Line, field, rule, reason);
}
