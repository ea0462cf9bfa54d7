using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Colours;

/// <summary>
/// Ranks the notes of one colorant in one atmosphere: the base asked for before one that is implied before any, the percentage
/// inside before outside, then the better confidence of the colour and of its percentage, then the order of the table. Where no base
/// was asked for, the notes are of different glazes: lead glazes stand last, and the order of the table, the usual first, goes before
/// confidence. Notes that need what the recipe lacks, and notes beyond their heat, do not apply.
/// </summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class NoteRanking(ColourCatalogue catalogue)
{
    /// <summary>Ranks.</summary>
    /// <param name="notes">The notes to rank; those of another atmosphere are left out.</param>
    /// <param name="recipe">Base, heat and what else is in the glaze.</param>
    /// <param name="percent">Percentage of the counted oxide; null where none was asked for.</param>
    /// <param name="atmosphere">The atmosphere.</param>
    public RankedNotes Rank(IEnumerable<ColourNoteRow> notes, Recipe recipe, decimal? percent, Atmosphere atmosphere)
    {
        var fitting = new List<Scored>();
        var (onlyWith, ruledOut, neighbours) = (new List<OtherNote>(), new List<OtherNote>(), new List<OtherNote>());
        foreach (var row in notes.Where(n => n.Atmosphere == Atmosphere.Any || n.Atmosphere == atmosphere))
        {
            if (Match(row.Base, recipe) is not { } match) continue;
            if (row.SeenOn == SeenOn.NeighbouringPots) neighbours.Add(Other(row, Message.Of("colours.on-pots-nearby")));
            else if (TooHotOrCold(row, recipe) is { } heat) ruledOut.Add(Other(row, heat));
            else if (Missing(row, recipe) is { Count: > 0 } missing)
                onlyWith.Add(Other(row, Message.Of("colours.only-with", ("ingredients", Phrases.And(missing)))));
            else fitting.Add(Score(row, match, percent));
        }

        // The sort keeps what is equal as it stands in the table, whose order says what is told first.
        var ranked = fitting.OrderBy(s => s.Match).ThenBy(s => IsHistoric(s.Match, s.Row.Base)).ThenBy(s => s.Order).ThenBy(s => s.Away)
            .ThenBy(s => s.Match == BaseMatch.NotAsked ? default : s.Row.ColourConfidence)
            .ThenBy(s => s.Match == BaseMatch.NotAsked ? default : s.Row.PercentConfidence ?? Confidence.Estimate)
            .Select((s, i) => new RankedNote(i + 1, s.Match, s.Percent, s.Why, ColourAnswers.Of(s.Row, catalogue)));
        return new([.. ranked], onlyWith, ruledOut, neighbours);
    }

    /// <summary>Whether a note is of a lead glaze that nobody asked for: it is told, and heads nothing.</summary>
    public bool IsHistoric(BaseMatch match, string @base) => match == BaseMatch.NotAsked && catalogue.IsHistoric(@base);

    private static BaseMatch? Match(string of, Recipe recipe) =>
        of == recipe.Base.Id && of != ColourCatalogue.AnyBase ? BaseMatch.Exact
        : recipe.ImpliedBases.Contains(of) ? BaseMatch.Implied
        : of == ColourCatalogue.AnyBase ? BaseMatch.Any
        : recipe.Base.Id == ColourCatalogue.AnyBase ? BaseMatch.NotAsked
        : null;

    private Message? TooHotOrCold(ColourNoteRow row, Recipe recipe)
    {
        if (recipe.Heat is not { } heat) return null;
        var cone = heat.Cone.ToString();
        var limits = row.Limits.Select(id => catalogue.Limits[id]);
        if (limits.FirstOrDefault(l => l.Kind == TemperatureLimitKind.UsableRange && heat.Beyond(l)) is { } limit)
            return Message.Of("colours.outside-its-heat", ("cone", cone), ("effect", limit.Effect));
        // A lead glaze at cone 10 is no glaze, whatever is told of its colorants in any base.
        var of = heat.Outside(recipe.Base.ConeMin, recipe.Base.ConeMax) ? recipe.Base : catalogue.Bases[row.Base];
        if (!heat.Outside(of.ConeMin, of.ConeMax)) return null;
        return Message.Of(
            "colours.outside-the-base", ("cone", cone), ("base", of.Name),
            ("range", of.ConeMin is null ? "below" : of.ConeMax is null ? "above" : "between"), ("min", of.ConeMin), ("max", of.ConeMax));
    }

    private static List<string> Missing(ColourNoteRow row, Recipe recipe) => [.. row.Needs.Where(n => recipe.Find(n) is null)];

    private Scored Score(ColourNoteRow row, BaseMatch match, decimal? percent)
    {
        var told = ColourAnswers.Percent(row, catalogue);
        var (fit, away) = told is null ? (PercentMatch.NotTold, 0d)
            : percent is not { } asked ? (PercentMatch.NotAsked, 0d)
            : asked < told.OxideMin ? (PercentMatch.Below, Math.Log((double)(told.OxideMin / asked)))
            : asked > told.OxideMax ? (PercentMatch.Above, Math.Log((double)(asked / told.OxideMax)))
            : (PercentMatch.Inside, 0d);
        // A note without a percentage says less than one that fits, and more than one that does not.
        var order = fit is PercentMatch.Inside or PercentMatch.NotAsked ? 0 : fit == PercentMatch.NotTold ? 1 : 2;
        var why = Message.Of(
            "colours.why", ("match", EnumWords.Word(match)), ("base", row.Base), ("fit", EnumWords.Word(fit)), ("asked", percent),
            ("min", told?.OxideMin), ("max", told?.OxideMax));
        return new(row, match, fit, order, away, why);
    }

    private static OtherNote Other(ColourNoteRow row, Message reason) => new(row.Id, row.Colour, reason, row.Sources);

    private sealed record Scored(ColourNoteRow Row, BaseMatch Match, PercentMatch Percent, int Order, double Away, Message Why);
}

/// <summary>The notes of one colorant in one atmosphere.</summary>
/// <param name="Notes">Those that apply, the best first.</param>
/// <param name="OnlyWith">Those that need what the recipe lacks.</param>
/// <param name="RuledOut">Those beyond their heat.</param>
/// <param name="Neighbours">What shows on pots nearby.</param>
internal sealed record RankedNotes(
    IReadOnlyList<RankedNote> Notes,
    IReadOnlyList<OtherNote> OnlyWith,
    IReadOnlyList<OtherNote> RuledOut,
    IReadOnlyList<OtherNote> Neighbours);
