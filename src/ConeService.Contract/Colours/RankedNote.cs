using ConeService.Contract.Texts;

namespace ConeService.Contract.Colours;

/// <summary>A colour that applies, with its place among the others.</summary>
/// <param name="Rank">1 is the best match.</param>
/// <param name="BaseMatch">How the note's base fits.</param>
/// <param name="PercentMatch">How the percentage fits.</param>
/// <param name="Why">Both in a sentence.</param>
/// <param name="Note">The note.</param>
public sealed record RankedNote(int Rank, BaseMatch BaseMatch, PercentMatch PercentMatch, Message Why, ColourNote Note);

/// <summary>A colour that does not apply, and why.</summary>
/// <param name="Note">Id of the note.</param>
/// <param name="Colour">The colour in words.</param>
/// <param name="Reason">Why it does not apply, or what it needs.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record OtherNote(string Note, string Colour, Message Reason, IReadOnlyList<string> Sources);

/// <summary>How the base of a note fits the question; the order is the ranking.</summary>
public enum BaseMatch
{
    /// <summary>The base asked for.</summary>
    Exact,

    /// <summary>A base that an additive of the recipe implies.</summary>
    Implied,

    /// <summary>The note holds for any base.</summary>
    Any,

    /// <summary>No base was asked for; the note has one.</summary>
    NotAsked,
}

/// <summary>How the percentage of a note fits the question.</summary>
public enum PercentMatch
{
    /// <summary>Within the told range.</summary>
    Inside,

    /// <summary>No percentage was asked for.</summary>
    NotAsked,

    /// <summary>The note tells none.</summary>
    NotTold,

    /// <summary>Less than the told range.</summary>
    Below,

    /// <summary>More than the told range.</summary>
    Above,
}
