using System.Globalization;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Cards;

/// <summary>The line that is pasted into a course page.</summary>
internal static class CardLine
{
    /// <summary>A frame that shows a card.</summary>
    /// <param name="root">The absolute address of the service.</param>
    /// <param name="card">The card.</param>
    /// <param name="look">Its look.</param>
    /// <param name="width">Width, px; null: as wide as the page allows.</param>
    /// <param name="height">Height, px.</param>
    public static string Frame(string root, Card card, CardLook look, int? width, int height)
    {
        var wide = width?.ToString(CultureInfo.InvariantCulture) ?? "100%";
        return $"<iframe src=\"{HtmlPage.Encode(Address(root, card, look))}\" title=\"{HtmlPage.Encode(card.Title)}\" width=\"{wide}\" "
            + string.Create(CultureInfo.InvariantCulture, $"height=\"{height}\" ")
            + "loading=\"lazy\" style=\"border:0;max-width:100%\"></iframe>";
    }

    /// <summary>The address of a card, whole.</summary>
    public static string Address(string root, Card card, CardLook look)
    {
        var query = look.Query();
        return $"{root}/cards/{card.Path}{(card.Path.Contains('?', StringComparison.Ordinal) ? query.Replace('?', '&') : query)}";
    }
}
