using ConeService.Data;

namespace ConeService.Firing.Study.Asking;

/// <summary>A question before its choices are put in order.</summary>
/// <param name="Topic">Its topic.</param>
/// <param name="About">What it is about, unique in its topic.</param>
/// <param name="Stem">The question.</param>
/// <param name="Right">The right answer.</param>
/// <param name="Wrong">Wrong answers, the commonest mistake first; at least three.</param>
/// <param name="Why">Why it is right.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">Of the right answer.</param>
/// <param name="Table">Table of the row.</param>
/// <param name="Key">Key of the row, as addresses have it.</param>
internal sealed record QuestionDraft(
    string Topic, string About, string Stem, string Right, IReadOnlyList<string> Wrong, string Why, IReadOnlyList<string> Sources,
    Confidence Confidence, string Table, string Key);
