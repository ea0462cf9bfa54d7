using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Study;

/// <summary>What was found for everyday words.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Query">What was asked.</param>
/// <param name="Answer">An answer in a sentence, where cones or a temperature were asked about; null otherwise.</param>
/// <param name="Items">What was found, the likeliest first; empty when nothing is about all that was asked.</param>
/// <param name="HasMore">Whether more was found than is told.</param>
/// <param name="UnknownWords">Words that stand nowhere in the data.</param>
/// <param name="Probably">Names that differ from what was asked by a slip of the pen; empty unless nothing was found.</param>
public sealed record SearchAnswer(
    string DatasetVersion,
    string Query,
    Message? Answer,
    IReadOnlyList<SearchHit> Items,
    bool HasMore,
    IReadOnlyList<string> UnknownWords,
    IReadOnlyList<string> Probably);

/// <summary>One thing that was found.</summary>
/// <param name="Id">Its id in its list.</param>
/// <param name="Name">Its name.</param>
/// <param name="List">The list that it belongs to, such as faults, glossary, processes or cones.</param>
/// <param name="Text">What it says, in short.</param>
/// <param name="Href">Its address.</param>
public sealed record SearchHit(string Id, string Name, string List, string? Text, Address Href);
