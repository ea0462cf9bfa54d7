using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>A form inside a card: it asks the card itself by GET, so that it works in a frame and without a script.</summary>
/// <param name="ask">The question that the card now answers.</param>
/// <param name="path">The card.</param>
internal sealed class CardForm(CardAsk ask, string path)
{
    private readonly StringBuilder fields = new();
    private int count;

    /// <summary>A line to write into.</summary>
    public CardForm Line(string name, string label, string example)
    {
        Open(name, label);
        fields.Append(CultureInfo.InvariantCulture,
            $"<input id=\"f-{name}\" name=\"{name}\" value=\"{HtmlPage.Encode(ask[name])}\" placeholder=\"{HtmlPage.Encode(example)}\" ")
            .Append("autocomplete=\"off\" size=\"8\"></p>");
        return this;
    }

    /// <summary>A choice.</summary>
    /// <param name="name">Name of the parameter.</param>
    /// <param name="label">What is chosen.</param>
    /// <param name="choices">Values and what they are called.</param>
    /// <param name="chosen">What is taken when nothing is chosen.</param>
    public CardForm Choice(string name, string label, IEnumerable<(string Value, string Text)> choices, string chosen)
    {
        Open(name, label);
        fields.Append(CultureInfo.InvariantCulture, $"<select id=\"f-{name}\" name=\"{name}\">");
        var now = ask[name] ?? chosen;
        var all = choices.ToList();
        // What was asked for by an address stands in the form too, so that the form asks nothing else than what is answered.
        if (now.Length > 0 && all.TrueForAll(c => c.Value != now)) all.Add((now, now));
        foreach (var (value, text) in all)
        {
            fields.Append(CultureInfo.InvariantCulture,
                $"<option value=\"{HtmlPage.Encode(value)}\"{(value == now ? " selected" : "")}>{HtmlPage.Encode(text)}</option>");
        }

        fields.Append("</select></p>");
        return this;
    }

    /// <summary>Puts the form onto the card.</summary>
    /// <param name="body">The card.</param>
    /// <param name="button">What its button says.</param>
    public void Into(CardBody body, string button)
    {
        var look = ask.Look;
        var hidden = (look.IsShort ? "<input type=\"hidden\" name=\"size\" value=\"short\">" : "")
            + (look.IsChosen ? $"<input type=\"hidden\" name=\"theme\" value=\"{EnumWords.Word(look.Theme)}\">" : "");
        var html = $"<form method=\"get\" action=\"{HtmlPage.Encode(new Address("/cards/" + path))}\">{hidden}{fields}"
            + $"<p class=\"go\"><button>{HtmlPage.Encode(button)}</button></p></form>";
        var across = look.IsShort ? 3 : 4;
        body.Place(html, ((count + across) / across * (look.IsShort ? 50 : 64)) + 12, needed: true);
    }

    private void Open(string name, string label)
    {
        count++;
        fields.Append(CultureInfo.InvariantCulture, $"<p><label for=\"f-{name}\">{HtmlPage.Encode(label)}</label>");
    }
}
