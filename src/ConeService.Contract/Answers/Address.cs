using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>An address of this service, told from where the reader reaches it: behind a path prefix too.</summary>
/// <param name="Path">The path from the root of the service, such as <c>/v1/cones</c>, or a template of one (RFC 6570).</param>
public sealed record Address(string Path)
{
    /// <summary>The address for who is spoken to now.</summary>
    public override string ToString() => Speech.Current.Root + Path;
}
