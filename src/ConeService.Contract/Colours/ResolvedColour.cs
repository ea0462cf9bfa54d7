using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>The colour in one atmosphere, with everything it rests on.</summary>
/// <param name="Atmosphere">The atmosphere.</param>
/// <param name="Covered">False where no source in the package covers it.</param>
/// <param name="Basis">What the colour rests on.</param>
/// <param name="Colour">The colour in words; null where not covered, and in lists.</param>
/// <param name="ColourWords">The colour in words of the closed list.</param>
/// <param name="Swatch">An estimate for the eye; null where none can be given.</param>
/// <param name="Confidence">The weakest confidence of what the colour rests on; null where not covered.</param>
/// <param name="Explanation">How the colour was found, in sentences.</param>
/// <param name="RestsOn">Ids of the notes and rules that the colour rests on.</param>
/// <param name="Colorants">Each colorant by itself.</param>
/// <param name="Interactions">What ingredients, heat and atmosphere do together.</param>
/// <param name="Warnings">What may go wrong or hurt.</param>
/// <param name="Sources">Ids of the sources of the colour and the interactions.</param>
public sealed record ResolvedColour(
    [property: AtmosphereWords(AtmosphereUse.Colour)] Atmosphere Atmosphere,
    bool Covered,
    ColourBasis Basis,
    Message? Colour,
    IReadOnlyList<string> ColourWords,
    Swatch? Swatch,
    Confidence? Confidence,
    Message Explanation,
    IReadOnlyList<string> RestsOn,
    IReadOnlyList<ColorantColours> Colorants,
    IReadOnlyList<Interaction> Interactions,
    IReadOnlyList<ColourWarning> Warnings,
    IReadOnlyList<string> Sources);

/// <summary>What a colour rests on.</summary>
public enum ColourBasis
{
    /// <summary>A rule on ingredients together.</summary>
    Interaction,

    /// <summary>A note on this very mixture.</summary>
    MixtureNote,

    /// <summary>The best note of the one colorant.</summary>
    SingleNote,

    /// <summary>Several colorants, and no source says how they mix: each is told by itself.</summary>
    Parts,

    /// <summary>A list was asked for, not one colour.</summary>
    List,

    /// <summary>No source in the package covers it.</summary>
    NotCovered,
}

/// <summary>What one colorant does by itself.</summary>
/// <param name="Colorant">Id of the colorant.</param>
/// <param name="OxidePercent">Its percentage as the counted oxide; null where not stated.</param>
/// <param name="Covered">False where no note applies.</param>
/// <param name="Statement">The best note in a sentence, or that no source covers it.</param>
/// <param name="ColourNotes">The notes that apply, the best first.</param>
/// <param name="OnlyWith">Notes that need what the recipe lacks.</param>
/// <param name="RuledOut">Notes beyond their heat.</param>
/// <param name="Neighbours">What shows on pots nearby.</param>
public sealed record ColorantColours(
    string Colorant,
    decimal? OxidePercent,
    bool Covered,
    Message Statement,
    IReadOnlyList<RankedNote> ColourNotes,
    IReadOnlyList<OtherNote> OnlyWith,
    IReadOnlyList<OtherNote> RuledOut,
    IReadOnlyList<OtherNote> Neighbours);

/// <summary>What may go wrong or hurt.</summary>
/// <param name="Code">Kind of warning: the effect of a rule, or a name of its own.</param>
/// <param name="Rule">Id of the rule; null where it is none.</param>
/// <param name="Standing">Whether it holds here.</param>
/// <param name="Message">The warning in a sentence.</param>
/// <param name="Cautions">The cautions, each with its address.</param>
public sealed record ColourWarning(string Code, string? Rule, RuleStanding Standing, Message Message, IReadOnlyList<CautionLink> Cautions);
