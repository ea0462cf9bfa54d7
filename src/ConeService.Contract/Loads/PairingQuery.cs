using ConeService.Contract.Answers;

namespace ConeService.Contract.Loads;

/// <summary>A pairing asked by the parameters of a link.</summary>
/// <param name="Body">Id of a clay body.</param>
/// <param name="Glaze">Ids of its coats, innermost first, separated by commas; left out: bare ware.</param>
/// <param name="Cone">The cone of the firing.</param>
/// <param name="Atmosphere">The atmosphere of the firing.</param>
/// <param name="FiringKind">The kind of firing.</param>
/// <param name="State">State of the ware; left out: the state that such a firing takes.</param>
/// <param name="Use">food or decorative; left out: nothing is promised for food.</param>
public sealed record PairingQuery(
    string? Body, string? Glaze, string? Cone, string? Atmosphere, string? FiringKind, string? State, string? Use)
{
    /// <summary>The same question as it would be posted.</summary>
    public PairingRequest Posted() => new(
        SentText.Of(Body),
        Coats: [.. (Glaze ?? "").Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(g => new CoatRequest(SentText.Of(g)))],
        Firing: new(SentText.Of(FiringKind), SentText.Of(Cone), SentText.Of(Atmosphere)),
        State: SentText.Of(State),
        Use: SentText.Of(Use));

    /// <summary>The parameter that a member of the posted question comes from.</summary>
    /// <param name="pointer">JSON pointer to the member.</param>
    public static string Parameter(string pointer) =>
        pointer.StartsWith("/coats", StringComparison.Ordinal) ? "glaze" : pointer[(pointer.LastIndexOf('/') + 1)..];
}
