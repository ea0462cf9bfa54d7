using System.Globalization;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>Words that several cards share.</summary>
internal static class CardWords
{
    /// <summary>What a swatch is.</summary>
    public const string Swatches = "Swatches are estimates, chosen from the words and never measured.";

    /// <summary>How far a value can be trusted, for who is no archivist.</summary>
    public static string Of(Confidence confidence) => confidence switch
    {
        Confidence.Corroborated => "two printed sources",
        Confidence.Published => "one printed source",
        Confidence.FromMemory => "from memory",
        Confidence.CommonPractice => "common practice",
        Confidence.Derived => "computed",
        _ => "estimate",
    };

    /// <summary>A number without digits that it does not need.</summary>
    public static string Number(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A temperature in whole degrees.</summary>
    public static string Whole(decimal value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);

    /// <summary>A heating rate in both units.</summary>
    public static string Rate(decimal? rate) =>
        rate is { } r ? string.Create(CultureInfo.InvariantCulture, $"{r:0.##} °C/h ({r * 9m / 5m:0.#} °F/h)") : "not stated";

    /// <summary>A range of cones.</summary>
    public static string Cones(string? from, string? to) =>
        from is null ? "by eye, without cones" : to is null || from == to ? $"cone {from}" : $"cone {from} to {to}";

    /// <summary>Words that stand in a row, each with its first letter large where it begins a cell.</summary>
    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A caution: what, and what to do.</summary>
    public static string Of(CautionLink caution) => $"{caution.Hazard} ({EnumWords.Word(caution.Severity)}): {caution.Control}";

    /// <summary>A caution in a student's words: what, who and what to do. For cards with room.</summary>
    public static string InFull(CautionLink caution) =>
        $"{caution.Hazard} ({EnumWords.Word(caution.Severity)}): {caution.Student?.ToString() ?? caution.Control}";

    /// <summary>Cautions as there is room: in a student's words on a full card, what and what to do on a short one.</summary>
    public static IEnumerable<string> Told(IEnumerable<CautionLink> cautions, CardLook look) =>
        cautions.Select(c => look.IsShort ? Of(c) : InFull(c));

    /// <summary>The words of a list of enumerated ones.</summary>
    public static string Words<T>(IEnumerable<T> words)
        where T : struct, Enum => string.Join(", ", words.Select(w => EnumWords.Word(w).Replace('-', ' ')));

    /// <summary>A swatch beside its colour in words.</summary>
    public static string Swatch(string hex) =>
        $"<span class=\"sw\" style=\"background:{HtmlPage.Encode(hex)}\"></span>";

    /// <summary>A link to another card, in the same frame.</summary>
    public static string Link(CardLook look, string path, string text, string query = "") =>
        $"<a href=\"{HtmlPage.Encode(new Address("/cards/" + path).ToString() + look.Query(query))}\">{HtmlPage.Encode(text)}</a>";
}
