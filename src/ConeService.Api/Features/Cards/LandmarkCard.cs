using ConeService.Contract.Answers;
using ConeService.Contract.Study;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>What happens in ware, glaze and kiln, from cold to the top and back.</summary>
internal static class LandmarkCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "landmarks";

    public static readonly string[] Names = ["phase"];

    public static Card Of(CardAsk ask)
    {
        var (list, refused) = CardFrame.Or(() => ask.Reference.Study.Landmarks(ask["phase"]), () => ask.Reference.Study.Landmarks());
        return new(
            CardFrame.Path(Path, ask, Names), "What happens at which temperature",
            "What happens in ware, glaze and kiln on the way up and down, and what to do about it.",
            body => Write(body, ask, list, refused),
            [.. list.Items.SelectMany(l => l.Sources).Distinct()])
        {
            Refused = refused,
        };
    }

    private static void Write(CardBody body, CardAsk ask, LandmarkList list, RefusedException? refused)
    {
        if (!ask.Look.IsShort)
        {
            var phases = EnumWords.All<LandmarkPhase>().Select(p => (p, Told(p)));
            new CardForm(ask, Path).Choice("phase", "On the way", [("", "all"), .. phases], "").Into(body, "Show");
        }

        CardFrame.Wrong(body, refused);
        foreach (var phase in list.Items.GroupBy(l => l.Phase).OrderBy(g => g.Key))
        {
            // On the way down the hottest comes first.
            var own = phase.Key == LandmarkPhase.Cooling
                ? phase.OrderByDescending(l => l.CelsiusMax)
                : phase.OrderBy(l => l.CelsiusMin).ThenBy(l => l.CelsiusMax);
            body.Table(CardWords.Sentence(Told(EnumWords.Word(phase.Key))),
                ask.Look.IsShort ? ["°C", "What happens"] : ["°C", "What happens", "What to do"],
                own.Select(l => ask.Look.IsShort ? (Cell[])[Band(l), l.Name] : [Band(l), Effect(l), l.Advice]));
        }

        body.Say("A thermocouple shows its own place, and thick ware lags behind it.");
        body.Say(list.Notice.ToString());
    }

    private static string Band(Landmark l) => l.CelsiusMin == l.CelsiusMax
        ? CardWords.Number(l.CelsiusMin)
        : $"{CardWords.Number(l.CelsiusMin)} to {CardWords.Number(l.CelsiusMax)}";

    private static string Effect(Landmark l) => l.Effect is { } effect ? $"{l.Name}. {effect}" : l.Name;

    private static string Told(string phase) => phase switch
    {
        "heating" => "up, while heating",
        "cooling" => "down, while cooling",
        "either" => "both ways",
        _ => "by eye: how the kiln looks",
    };
}
