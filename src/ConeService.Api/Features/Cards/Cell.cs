using ConeService.Api.Http;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Cards;

/// <summary>A cell of a table on a card.</summary>
/// <param name="Text">What it says.</param>
/// <param name="IsNumber">Whether it is set to the right.</param>
/// <param name="Markup">Trusted markup in place of the text; null: the text.</param>
internal readonly record struct Cell(string Text, bool IsNumber = false, string? Markup = null)
{
    /// <summary>What stands between its tags.</summary>
    public string Html => Markup ?? HtmlPage.Encode(Text);

    public static implicit operator Cell(string? text) => new(text ?? "");

    public static implicit operator Cell(Message? text) => new(text?.ToString() ?? "");

    /// <summary>A number.</summary>
    public static Cell Number(string text) => new(text, true);
}
