using ConeService.Contract.Answers;
using ConeService.Contract.Materials;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>A family of ware, or one clay body: the cones at which it is bisqued and mature, and what happens outside them.</summary>
internal static class WareCard
{
    // A clay body belongs to the first family that its name names; terracotta is red earthenware, talc and low-fire bodies are white.
    private static readonly (string Id, string Name, string[] Words)[] Families =
    [
        ("earthenware", "Earthenware", ["earthenware", "terracotta", "talc", "low-fire", "brick"]),
        ("stoneware", "Stoneware", ["stoneware", "high-fire-grogged", "salt-soda", "wood-fire"]),
        ("porcelain", "Porcelain and bone china", ["porcelain", "bone-china"]),
        ("raku", "Raku and other bodies for shock", ["raku", "flameproof"]),
        ("sculpture", "Sculpture and paper clay", ["sculpture", "paper-clay"]),
    ];

    /// <summary>Ids of the families.</summary>
    public static IEnumerable<(string Id, string Name)> All => Families.Select(f => (f.Id, f.Name));

    public static Card Of(CardAsk ask)
    {
        var materials = ask.Reference.Materials;
        var family = Families.FirstOrDefault(f => f.Id == ask.Id);
        var all = materials.Bodies().Items;
        var own = family.Id is null
            ? all.Where(b => b.Id == ask.Id).ToList()
            : [.. all.Where(b => Families.First(f => f.Words.Any(w => b.Id.Contains(w, StringComparison.Ordinal))
                || f == Families[^1]) == family)];
        if (own.Count == 0)
        {
            var there = Families.Select(f => f.Id).Concat(all.Select(b => b.Id)).ToList();
            var near = NearMatches.Find(ask.Id, there);
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, "ware", ask.Id, Message.Of("answers.not-found", ("noun", "ware"), ("id", ask.Id)),
                Message.Verbatim(there), near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null));
        }

        var bodies = own.Select(b => materials.Body(b.Id).ClayBody).ToList();
        var title = family.Name ?? CardWords.Sentence(bodies[0].Name);
        return new(
            "ware/" + ask.Id, title, $"{title}: at which cones it is bisqued and mature, and what happens outside them.",
            body => Write(body, bodies, ask.Look.IsShort), [.. bodies.SelectMany(b => b.Sources).Distinct()]);
    }

    private static void Write(CardBody body, List<ClayBody> bodies, bool isShort)
    {
        Cell[] heads = ["Clay", "Bisque at cone", "Mature at cone", "Best at cone", "Holds water"];
        body.Table("Their cones", heads[..(isShort ? 3 : 5)], bodies.Select(b => ((Cell[])
        [
            CardWords.Sentence(b.Name), Range(b.BisqueConeMin, b.BisqueConeMax),
            b.MatureConeMin is null ? "as its base clay" : Range(b.MatureConeMin, b.MatureConeMax!), b.MatureConeBest ?? "–",
            CardWords.Sentence(EnumWords.Word(b.HoldsWater).Replace('-', ' ')),
        ])[..(isShort ? 3 : 5)]));
        body.Say("Fired above its range a body bloats, slumps or melts onto the shelf; below it the ware stays weak and porous.", "warn");
        body.Table("Outside its cones", ["Clay", "Too cool", "Too hot"], bodies.Select(b => (Cell[])
        [
            CardWords.Sentence(b.Name), b.Underfired, b.Overfired,
        ]));
        body.List("What it is used for", bodies.Select(b => b.UseNote is { } use ? $"{CardWords.Sentence(b.Name)}: {use}" : ""));
        var weakest = bodies.Max(b => b.RangeConfidence);
        body.Say($"How sure of the ranges: {CardWords.Of(weakest)}. The bag of your own clay comes before any table; test a tile first.");
    }

    private static string Range(string from, string to) => from == to ? from : $"{from} to {to}";
}
