using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Xml.Linq;
using ConeService.Api.Features.Cards;
using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.Http.Reach;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.OEmbed;

/// <summary>oEmbed 1.0: what a course system pastes when a teacher gives it the address of a card. Always of the type rich.</summary>
internal static class OEmbedEndpoints
{
    /// <summary>Path of the endpoint.</summary>
    public const string Path = "/oembed";

    private const string Cards = "/cards/";

    public static void MapOEmbed(this IEndpointRouteBuilder routes) => routes
        .MapRead(Path, Answer).WithQuery("url", "maxwidth", "maxheight", "format").WithEmptyFields()
        .WithName("getOEmbed").WithSummary("The frame for the address of a card, as oEmbed 1.0 has it.")
        .Produces<string>(StatusCodes.Status200OK, JsonBody.MediaType, "text/xml").ExcludeFromDescription();

    private static IResult Answer(
        string? url, string? maxwidth, string? maxheight, string? format, HttpContext context, SnapshotHolder snapshots,
        ServiceAddress address)
    {
        // The standard answers a format that is not made by 501, whatever else was asked (2.3.4).
        if (format is not (null or "" or "json" or "xml"))
        {
            throw new RefusedException(new Finding(
                FindingCodes.FormatNotMade, "format", format, Message.Of("http.format-not-made", ("format", format)),
                Message.Verbatim(["json", "xml"])));
        }

        var wide = Mistakes.Try(context, () => Most(maxwidth, "maxwidth"), int.MaxValue);
        var high = Mistakes.Try(context, () => Most(maxheight, "maxheight"), int.MaxValue);
        var root = address.Root(context.Request);
        var below = Below(url, root, address.Prefix(context.Request));
        var (card, look) = CardAddress.Read(snapshots.Current, below, "url");
        var height = CardPage.Height(card, look);
        // What has no room for the whole card gets the short one.
        if (wide < CardLook.FullWidth || high < height) (look, height) = (look with { Size = CardSize.Short }, CardLook.ShortHeight);
        var width = Math.Min(wide, look.IsShort ? CardLook.ShortWidth : CardLook.FullWidth);
        height = Math.Min(high, height);
        (string Name, object Value)[] members =
        [
            ("version", "1.0"), ("type", "rich"), ("title", card.Title), ("provider_name", "ConeService"), ("provider_url", root + "/"),
            ("cache_age", 300), ("width", width), ("height", height), ("html", CardLine.Frame(root, card, look, width, height)),
        ];
        return format == "xml" ? Xml(members) : Json(members);
    }

    private static PreparedBody Json((string Name, object Value)[] members)
    {
        var json = new JsonObject();
        foreach (var (name, value) in members) json[name] = value is int number ? number : (string)value;
        return PreparedBody.Text(json.ToJsonString(new JsonSerializerOptions()), JsonBody.MediaType);
    }

    private static PreparedBody Xml((string Name, object Value)[] members)
    {
        var root = new XElement("oembed", members.Select(m => new XElement(m.Name, m.Value)));
        return PreparedBody.Text("<?xml version=\"1.0\" encoding=\"utf-8\" standalone=\"yes\"?>\n" + root, "text/xml");
    }

    // The card that an address names, from where cards begin. Other services have no answer here (2.3.4: 404).
    private static string Below(string? url, string root, string prefix)
    {
        var sent = url?.Trim() ?? "";
        if (sent.Length == 0)
        {
            throw new RefusedException(new Finding(
                FindingCodes.MemberMissing, "url", url, Message.Of("members.member-missing", ("member", "url")),
                Message.Verbatim([root + "/cards/cone-6"])));
        }

        // A card's own link to here may name it by its path, which has the prefix before it where the service has one.
        var path = sent.StartsWith(root + "/", StringComparison.OrdinalIgnoreCase) ? sent[root.Length..]
            : sent.StartsWith(prefix + "/", StringComparison.OrdinalIgnoreCase) ? sent[prefix.Length..]
            : sent.StartsWith('/') ? sent : "";
        if (path.StartsWith(Cards, StringComparison.Ordinal)) return path[Cards.Length..].Split('#')[0];
        throw new RefusedException(new Finding(
            FindingCodes.NotFound, "url", url, Message.Of("answers.not-found", ("noun", "card"), ("id", sent)),
            Message.Verbatim([root + "/cards/cone-6"])));
    }

    private static int Most(string? sent, string name)
    {
        if (string.IsNullOrEmpty(sent)) return int.MaxValue;
        return int.TryParse(sent, NumberStyles.None, CultureInfo.InvariantCulture, out var pixels) && pixels > 0
            ? pixels
            : throw new RefusedException(new Finding(
                FindingCodes.NumberExpected, name, sent, Message.Of("members.number-expected", ("member", name)),
                Message.Verbatim(["320", "640"])));
    }
}
