namespace ConeService.Data.Tests;

/// <summary>One way to break the minimal package, and the one fault it must give.</summary>
internal sealed record BreakingCase(string Name, string Rule, string File, int? Line, string? Field, Action<Scenario> Break)
{
    public string Package { get; init; } = "minimal";

    public static BreakingCase Of(string name, string rule, string file, int? line, string? field, Action<InMemoryPackage> breakIt) =>
        new(name, rule, file, line, field, s => breakIt(s.Base));

    /// <summary>In the descriptor the field names the place.</summary>
    public static BreakingCase Descriptor(string name, string? place, Action<InMemoryPackage> breakIt) =>
        Of(name, FaultRules.Descriptor, "datapackage.json", null, place, breakIt);
}

/// <summary>The packages of one test; without overlays until one is added.</summary>
internal sealed class Scenario
{
    public InMemoryPackage Base { get; } = MinimalPackage.Create();

    public List<InMemoryPackage> Overlays { get; } = [];

    public InMemoryPackage AddOverlay(string name = "north-shed", string version = "2.1.0")
    {
        var overlay = MinimalOverlay.Create(name, version);
        Overlays.Add(overlay);
        return overlay;
    }

    public Dataset Load() => DatasetLoader.Load(Base, Overlays);
}
