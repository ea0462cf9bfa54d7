namespace ConeService.Api.Tests.Support;

/// <summary>The address of every card that the data makes, and of cards with a question.</summary>
internal static class CardAddresses
{
    /// <summary>Cards with a question.</summary>
    public static readonly string[] Asked =
    [
        "convert?cone=6", "convert?temperature=1200&unit=C&rate=150C/h", "fit?body=red-earthenware&glaze=mid-range-gloss&cone=6",
        "colour-compare?colorant=copper&base=calcium&cone=10", "cautions?for=raku", "chart?chart=seger-1914",
        "schedule/bisque-careful?cone=06&unit=F", "glossary?term=candling", "glossary?term=greenware,soak,witness%20cone",
        "landmarks?phase=cooling",
    ];

    /// <summary>One card of each kind.</summary>
    public static readonly string[] OneOfEach =
    [
        "convert", "chart", "fit", "conditions", "landmarks", "glossary", "fault/bloating", "colour-compare", "cautions", "ware/stoneware",
            "colour/copper",
        "process/raku-western", "compare/salt,soda", "schedule/gas-reduction", "cone-06", .. Asked,
    ];

    /// <summary>Every card.</summary>
    public static async Task<List<string>> All(Api api)
    {
        async Task<IEnumerable<string>> Of(string list, string prefix, string member = "id") =>
            [.. (await api.Json(list)).GetProperty("items").EnumerateArray().Select(i => prefix + i.GetProperty(member).GetString())];
        return
        [
            .. OneOfEach, "ware/earthenware", "ware/porcelain", "ware/raku", "ware/sculpture",
            .. await Of("/v1/processes", "process/"), .. await Of("/v1/colorants", "colour/"), .. await Of("/v1/schedules", "schedule/"),
            .. await Of("/v1/faults", "fault/"),
            .. (await Of("/v1/glossary", "", "name")).Select(n => $"glossary?letter={n[0]}").Distinct(),
            .. await Of("/v1/clay-bodies", "ware/"), .. await Of("/v1/cones", "cone-", "cone"),
        ];
    }

    /// <summary>The address with a further parameter.</summary>
    public static string With(string card, string parameter) =>
        $"/cards/{card}{(card.Contains('?', StringComparison.Ordinal) ? '&' : '?')}{parameter}";
}
