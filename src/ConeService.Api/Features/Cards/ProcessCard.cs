using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Features.Cards;

/// <summary>A firing process: what happens, what goes in when, what the ware is good for, what can hurt; and several beside each
/// other.</summary>
internal static class ProcessCard
{
    private const int MostBesideEachOther = 4;

    public static Card Of(CardAsk ask)
    {
        var detail = ask.Reference.Practice.Process(ask.Id);
        var process = detail.Process;
        return new(
            "process/" + process.Id, process.Name,
            $"{process.Name}: what it does, what goes in when, water, food and microwave, and dangers.",
            body => Write(body, ask, detail), detail.Sources);
    }

    public static Card Compare(CardAsk ask)
    {
        var ids = ask.Id.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var all = ids.Take(MostBesideEachOther).Select(ask.Reference.Practice.Process).ToList();
        if (ids.Length is < 2 or > MostBesideEachOther || ids.Distinct().Count() != ids.Length)
        {
            throw new RefusedException(new Finding(
                FindingCodes.NotFound, "processes", ask.Id, Message.Of("answers.not-found", ("noun", "comparison"), ("id", ask.Id)),
                Message.Verbatim(["salt,soda", "salt,soda,wood-tunnel", "raku-western,raku-japanese-red"])));
        }

        return new(
            "compare/" + string.Join(',', ids), string.Join(" or ", all.Select(d => d.Process.Name)),
            "The same facts of several processes beside each other.", body => Beside(body, ask, all),
            [.. all.SelectMany(d => d.Sources).Distinct()]);
    }

    /// <summary>Whether the ware holds water.</summary>
    public static string Water(FiringProcess process) => Sentence(
        process.Watertight switch
        {
            WareAnswer.Yes => "Holds water",
            WareAnswer.No => "Does not hold water",
            WareAnswer.Conditional => "May hold water",
            WareAnswer.AsBody => "Holds water if its clay is dense",
            WareAnswer.AsHost => "Holds water as the ware under it does",
            WareAnswer.AsGlaze => "Holds water as its glaze does",
            _ => "Water: no question here",
        },
        process.WatertightNote);

    /// <summary>Whether food may touch the ware.</summary>
    public static string Food(FiringProcess process) => Sentence(
        process.FoodContact switch
        {
            ProcessFoodContact.NotForFood => "Not for food",
            ProcessFoodContact.TraditionalUse => "Used for food by custom; no test is known",
            ProcessFoodContact.LeachTestDecides or ProcessFoodContact.AsGlaze => "For food only a leach test tells",
            _ => "Food: no question here",
        },
        process.FoodContactNote);

    /// <summary>Whether the ware goes into a microwave oven.</summary>
    public static string Microwave(FiringProcess process) => Sentence(
        process.Microwave switch
        {
            WareAnswer.Yes => "Microwave oven: yes",
            WareAnswer.No => "Not for the microwave oven",
            WareAnswer.NotApplicable => "Microwave oven: no question here",
            WareAnswer.AsBody or WareAnswer.AsHost or WareAnswer.AsGlaze => "Microwave oven: as its clay and glaze allow",
            _ => "Microwave oven: sometimes",
        },
        process.CareNote);

    /// <summary>How it is fired.</summary>
    public static IEnumerable<string> Firing(FiringProcess process) =>
    [
        $"Heat: {CardWords.Cones(process.ConeMin, process.ConeMax)}.",
        $"Atmosphere: {process.AtmosphereNote}",
        $"Kiln: {CardWords.Words(process.Kilns)}. {process.KilnNote}".Trim(),
        Duration(process),
        $"Good for: {process.Use}",
    ];

    /// <summary>When a material goes in.</summary>
    public static string When(AddedMaterial material) => material.When + At(material);

    private static string Sentence(string text, string? note) => note is null ? text + "." : $"{text}. {note}";

    private static void Write(CardBody body, CardAsk ask, ProcessDetail detail)
    {
        var process = detail.Process;
        body.Say(ask.Look.IsShort ? process.Effect : process.Student?.ToString() ?? process.Effect, "lead", needed: true);
        // On a short card the gravest danger stands before what the ware is good for.
        if (ask.Look.IsShort && detail.Cautions.Count > 0) body.Say(CardWords.Of(detail.Cautions[0]), "warn");
        body.List("The ware", [Water(process), Food(process), Microwave(process)]);
        if (!ask.Look.IsShort) body.List("Dangers, and what to do", CardWords.Told(detail.Cautions, ask.Look));
        body.List("The firing", Firing(process));
        if (detail.AddedMaterials.Count > 0)
        {
            body.Table("What goes in, and when", ["Material", "When"], detail.AddedMaterials.Select(m => (Cell[])
            [
                CardWords.Sentence(m.Material), When(m),
            ]));
        }

        body.Say(detail.FoodContact.Statement.ToString());
        body.Say(detail.Notice.ToString());
        body.Say($"How sure: {CardWords.Of(process.Confidence)}. {process.Note}".Trim(), "small");
    }

    private static string At(AddedMaterial material)
    {
        if (material.CelsiusMin is not { } low)
            return material.ConeMin is { } cone ? $" ({CardWords.Cones(cone, material.ConeMax)})" : "";
        var to = material.CelsiusMax is { } high && high != low ? " to " + CardWords.Number(high) : "";
        return $" ({CardWords.Number(low)}{to} °C)";
    }

    private static string Duration(FiringProcess process)
    {
        if (process.DurationMinutesMin is not { } low) return process.DurationNote is { } note ? "Time: " + note : "";
        var high = process.DurationMinutesMax is { } most && most != low ? " to " + QuantityFormat.Duration((double)most) : "";
        return $"Time: {QuantityFormat.Duration((double)low)}{high}. {process.DurationNote}".Trim();
    }

    private static void Beside(CardBody body, CardAsk ask, List<ProcessDetail> all)
    {
        Cell[] Row(string what, Func<ProcessDetail, string> of) => [what, .. all.Select(d => (Cell)of(d))];
        body.Table("Beside each other", ["What is asked", .. all.Select(d => (Cell)d.Process.Name)],
        [
            Row("What it does", d => d.Process.Effect),
            Row("Dangers", d => string.Join(", ", d.Cautions.Select(c => c.Hazard.ToLowerInvariant()))),
            Row("What goes in", d => string.Join("; ", d.AddedMaterials.Select(m => $"{m.Material}: {m.When.TrimEnd('.')}{At(m)}"))),
            Row("Water", d => Water(d.Process)),
            Row("Food", d => Food(d.Process)),
            Row("Microwave", d => Microwave(d.Process)),
            Row("Heat", d => CardWords.Sentence(CardWords.Cones(d.Process.ConeMin, d.Process.ConeMax))),
            Row("Atmosphere", d => d.Process.AtmosphereNote),
            Row("Kiln", d => CardWords.Sentence(CardWords.Words(d.Process.Kilns))),
            Row("Time", d => Duration(d.Process).Replace("Time: ", "", StringComparison.Ordinal)),
            Row("Good for", d => d.Process.Use),
            Row("How sure", d => CardWords.Sentence(CardWords.Of(d.Process.Confidence))),
        ]);
        body.List("Dangers, and what to do", CardWords.Told(all.SelectMany(d => d.Cautions).DistinctBy(c => c.Id), ask.Look));
        body.Say(all[0].FoodContact.Statement.ToString());
        body.Say(all[0].Notice.ToString());
    }
}
