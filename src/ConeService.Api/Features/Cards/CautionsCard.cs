using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>The cautions of a process, a material or a kiln, the gravest first.</summary>
internal static class CautionsCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "cautions";

    public static readonly string[] Names = ["for"];

    public static Card Of(CardAsk ask)
    {
        var (list, refused) = CardFrame.Or(() => ask.Reference.Practice.Cautions(ask["for"]), () => ask.Reference.Practice.Cautions());
        var what = refused is null && ask["for"] is { } asked ? "Cautions: " + asked.Replace('-', ' ') : "Cautions in the kiln room";
        return new(
            CardFrame.Path(Path, ask, Names), what, "What can hurt, who is exposed, and what to do about it.",
            body => Write(body, ask, list, refused), [.. list.Items.SelectMany(c => c.Sources).Distinct()])
        {
            Refused = refused,
        };
    }

    /// <summary>Every word that cautions belong to.</summary>
    public static IEnumerable<string> For(FiringReference reference) =>
        reference.Practice.Cautions().Items.SelectMany(c => c.AppliesTo).Distinct().Order(StringComparer.Ordinal);

    /// <summary>Cautions, the gravest first.</summary>
    public static IEnumerable<Caution> Gravest(IEnumerable<Caution> cautions) => cautions.OrderByDescending(c => c.Severity);

    private static void Write(CardBody body, CardAsk ask, CautionList list, RefusedException? refused)
    {
        if (!ask.Look.IsShort)
        {
            new CardForm(ask, Path)
                .Choice("for", "For", [("", "everything"),
                    .. For(ask.Reference).Select(w => (w, CardWords.Sentence(w.Replace('-', ' '))))], "")
                .Into(body, "Show");
        }

        CardFrame.Wrong(body, refused);

        var gravest = Gravest(list.Items).ToList();
        if (ask["for"] is null && !ask.Look.IsShort)
        {
            body.Table("The gravest first", ["What", "How bad", "What to do"], gravest.Select(c => (Cell[])
            [
                c.Name, EnumWords.Word(c.Severity), c.Control,
            ]));
        }
        else
        {
            body.Table("The gravest first", ask.Look.IsShort ? ["What", "What to do"] : ["What", "How bad", "Who, and what to do"],
                gravest.Select(c => ask.Look.IsShort
                    ? (Cell[])[c.Name, c.Control]
                    :
                    [
                        c.Name, EnumWords.Word(c.Severity), c.Student?.ToString() ?? $"{c.When} {c.Control} Who: {CardWords.Words(c.Who)}.",
                    ]));
        }

        body.Say(list.Notice.ToString());
    }
}
