using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>A kind of card.</summary>
/// <param name="Name">Its name, and the beginning of its address below /cards.</param>
/// <param name="Tells">What it tells, in the words of the index.</param>
/// <param name="Names">Its query parameters beside those of the look.</param>
/// <param name="Make">Makes the card.</param>
/// <param name="Ids">What may stand after its name; null where nothing does.</param>
internal sealed record CardKind(
    string Name, string Tells, string[] Names, Func<CardAsk, Card> Make,
    Func<FiringReference, IEnumerable<(string Id, string Name)>>? Ids = null)
{
    /// <summary>What stands between its name and an id.</summary>
    public string Between { get; init; } = "/";

    /// <summary>The same of a card, for a collection of few.</summary>
    public string Pattern => Ids is null ? Name : $"{Name}{Between}{{id}}";
}

/// <summary>Every kind of card.</summary>
internal static class CardKinds
{
    // Comparisons that a course asks for; any other two to four processes can be compared too.
    private static readonly string[][] Compared = [["salt", "soda"], ["raku-western", "raku-japanese-red"], ["bisque", "low-fire-glaze"]];

    /// <summary>The kinds, in the order of the index.</summary>
    public static readonly IReadOnlyList<CardKind> All =
    [
        new(ConvertCard.Path, "A converter: cone to temperature, temperature to cone", ConvertCard.Names, ConvertCard.Of),
        new(ChartCard.Path, "All cones of a chart, hottest first", ChartCard.Names, ChartCard.Of),
        new(FitCard.Path, "Will it survive? Clay, glaze and firing", FitCard.Names, FitCard.Of),
        new(ConditionsCard.Path, "Oxidation and reduction", [], ConditionsCard.Of),
        new(ColourCompareCard.Path, "Colours in oxidation beside reduction", ColourCompareCard.Names, ColourCompareCard.Of),
        new(CautionsCard.Path, "Cautions, the gravest first", CautionsCard.Names, CautionsCard.Of),
        new("ware", "Families of ware and their cones", [], WareCard.Of, static _ => WareCard.All),
        new("colour", "The colours of one colorant", [], ColourCard.Of, static r => r.Dataset.Colorants.Select(c => (c.Id, c.Name))),
        new("process", "A firing process", [], ProcessCard.Of, static r => r.Practice.Processes().Items.Select(p => (p.Id, p.Name))),
        new("compare", "Processes beside each other", [], ProcessCard.Compare, Comparisons),
        new("schedule", "A schedule, step by step", ScheduleCard.Names, ScheduleCard.Of,
            static r => r.Schedules.List().Items.Select(s => (s.Id, s.Name))),
        new("cone", "One cone on every chart", [], ConeCard.Of,
            static r => r.Cones.List().Items.Reverse().Select(c => (c.Cone, "Cone " + c.Cone)))
        {
            Between = "-",
        },
    ];

    /// <summary>The kind and the id that an address below /cards names; null where it names none.</summary>
    public static (CardKind Kind, string Id)? Find(string path)
    {
        foreach (var kind in All)
        {
            if (kind.Ids is null && path == kind.Name) return (kind, "");
            if (kind.Ids is not null && path.StartsWith(kind.Name + kind.Between, StringComparison.Ordinal))
                return (kind, path[(kind.Name.Length + 1)..]);
        }

        return null;
    }

    private static IEnumerable<(string Id, string Name)> Comparisons(FiringReference reference)
    {
        var names = reference.Practice.Processes().Items.ToDictionary(p => p.Id, p => p.Name);
        return Compared.Where(c => Array.TrueForAll(c, names.ContainsKey))
            .Select(c => (string.Join(',', c), string.Join(" or ", c.Select(i => names[i]))));
    }
}
