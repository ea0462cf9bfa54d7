using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>How much of a card is shown.</summary>
internal enum CardSize
{
    /// <summary>All of it, as high as it needs to be.</summary>
    Full,

    /// <summary>What fits into 320 by 360 pixels.</summary>
    Short,
}

/// <summary>The colours of a card.</summary>
internal enum CardTheme
{
    /// <summary>Dark ink on light ground.</summary>
    Light,

    /// <summary>Light ink on dark ground.</summary>
    Dark,

    /// <summary>As the reader has set the screen.</summary>
    Auto,
}

/// <summary>What was asked of the look of a card.</summary>
/// <param name="Size">How much is shown.</param>
/// <param name="Theme">The colours.</param>
/// <param name="IsChosen">False where the colours follow from where the card is shown.</param>
/// <param name="Dataset">The version of the data package that it is pinned to; null where it is not.</param>
internal sealed record CardLook(CardSize Size, CardTheme Theme, bool IsChosen = true, string? Dataset = null)
{
    /// <summary>Width of a short card, px.</summary>
    public const int ShortWidth = 320;

    /// <summary>Height of a short card, px.</summary>
    public const int ShortHeight = 360;

    /// <summary>Width for which the height of a full card is told, px.</summary>
    public const int FullWidth = 640;

    /// <summary>Names of the query parameters.</summary>
    public static readonly string[] Names = ["size", "theme"];

    // What browsers say of a request for a page of its own (Fetch Metadata); frames and what says nothing are light, as course pages are.
    private const string Destination = "Sec-Fetch-Dest";

    /// <summary>The header on which the colours depend where none were asked for.</summary>
    public static string Header => Destination;

    public bool IsShort => Size == CardSize.Short;

    /// <summary>Its part of the key under which a card is kept.</summary>
    public string Key => $"{EnumWords.Word(Size)}/{EnumWords.Word(Theme)}/{IsChosen}/{Dataset}";

    /// <summary>Reads the look.</summary>
    /// <exception cref="RefusedException">A word is none of those that may stand there.</exception>
    public static CardLook Read(HttpRequest request) =>
        Read(request.Query, request.Headers[Destination] == "document" ? CardTheme.Auto : CardTheme.Light);

    /// <summary>Reads the look from the parameters of a card.</summary>
    /// <param name="query">The parameters.</param>
    /// <param name="otherwise">The colours where none are asked for.</param>
    /// <exception cref="RefusedException">A word is none of those that may stand there.</exception>
    public static CardLook Read(IQueryCollection query, CardTheme otherwise)
    {
        var findings = new List<Finding>();
        var size = Word(query, "size", CardSize.Full, findings);
        var theme = Word(query, "theme", otherwise, findings);
        var isChosen = query["theme"].ToString().Length > 0;
        var dataset = query.TryGetValue(PinnedDataset.Parameter, out var pin) ? pin.ToString().Replace(' ', '+') : null;
        return findings.Count == 0 ? new(size, theme, isChosen, dataset) : throw new RefusedException(findings);
    }

    /// <summary>The colours of a page that tells what was wrong: those asked for, if they can be read.</summary>
    public static CardTheme ThemeOf(HttpRequest request) =>
        EnumWords.TryRead(request.Query["theme"].ToString(), out CardTheme theme) ? theme : CardTheme.Light;

    /// <summary>The same look for another card, as the end of its address.</summary>
    /// <param name="more">Further parameters, made fit for an address.</param>
    public string Query(string more = "")
    {
        List<string> parts = [];
        if (more.Length > 0) parts.Add(more);
        if (IsShort) parts.Add("size=short");
        if (IsChosen) parts.Add("theme=" + EnumWords.Word(Theme));
        if (Dataset is not null) parts.Add($"{PinnedDataset.Parameter}={Uri.EscapeDataString(Dataset)}");
        return parts.Count == 0 ? "" : "?" + string.Join('&', parts);
    }

    private static T Word<T>(IQueryCollection query, string name, T otherwise, List<Finding> findings)
        where T : struct, Enum
    {
        var sent = query[name].ToString();
        if (sent.Length == 0) return otherwise;
        if (EnumWords.TryRead(sent, out T word)) return word;
        findings.Add(new(
            FindingCodes.WordUnknown, name, sent, Message.Of("members.word-unknown", ("sent", sent), ("member", name)),
            Message.Verbatim(EnumWords.All<T>())));
        return otherwise;
    }
}
