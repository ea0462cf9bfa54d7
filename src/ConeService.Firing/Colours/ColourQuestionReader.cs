using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>
/// Reads questions on colour from a query or a body; everything wrong is said at once, everything left out is assumed aloud.
/// </summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class ColourQuestionReader(ColourCatalogue catalogue)
{
    /// <summary>Reads a query; null parameters were left out.</summary>
    /// <exception cref="RefusedException">A parameter can't be read.</exception>
    public AskedColour Read(
        string? colorant, string? atmosphere, string? @base, string? cone, string? percent, string? kiln, string? colour)
    {
        var findings = new List<Finding>();
        var share = PercentInput.Read(SentText.Of(percent), "percent", findings);
        if (share is not null && string.IsNullOrWhiteSpace(colorant))
        {
            findings.Add(new(
                FindingCodes.MemberMissing, "colorant", null, Message.Of("colours.percent-without-colorant"),
                Message.Verbatim(catalogue.Colorants.Keys.Order(StringComparer.Ordinal))));
        }

        var one = ColorantNamed(colorant, "colorant", findings) is { } weighed ? new RecipeColorant(weighed, share) : null;
        var word = Name(catalogue.WordNames, colour, "colour", findings);
        return Finish(one is null ? [] : [one], [], new(@base, atmosphere, SentText.Of(cone), kiln), "", word, findings);
    }

    /// <summary>Reads a body.</summary>
    /// <exception cref="RefusedException">A member can't be read, or the percentages add up to more than 100.</exception>
    public AskedColour Read(ColourRequest request)
    {
        var findings = new List<Finding>();
        var colorants = (request.Colorants ?? [])
            .Select((entry, i) => Colorant(entry, $"/colorants/{i}", findings)).OfType<RecipeColorant>().ToList();
        var additives = (request.Additives ?? [])
            .Select((entry, i) => Additive(entry, $"/additives/{i}", findings)).OfType<(string Id, decimal? Percent)>().ToList();
        var sum = colorants.Sum(c => c.Percent ?? 0) + additives.Sum(a => a.Percent ?? 0);
        if (sum > 100)
        {
            findings.Add(new(
                FindingCodes.PercentSum, "", FormattableString.Invariant($"{sum:0.###}"), Message.Of("colours.percent-sum"),
                [Message.Of("colours.percent-sum-allowed")], Message.Of("colours.grams")));
        }

        var named = colorants.Select(c => c.Id).Concat(additives.Select(a => a.Id)).CountBy(id => id);
        foreach (var (id, times) in named.Where(c => c.Value > 1))
        {
            findings.Add(new(
                FindingCodes.IngredientRepeated, "", id, Message.Of("colours.ingredient-repeated", ("ingredient", id), ("count", times)),
                [Message.Of("colours.each-ingredient-once")], Message.Of("colours.two-forms")));
        }

        return Finish(colorants, additives, new(request.Base, request.Atmosphere, request.Cone, request.Kiln), "/", null, findings);
    }

    private RecipeColorant? Colorant(ColorantEntry? entry, string at, List<Finding> findings)
    {
        var percent = PercentInput.Read(entry?.Percent ?? default, at + "/percent", findings);
        if (string.IsNullOrWhiteSpace(entry?.Colorant))
        {
            findings.Add(new(
                FindingCodes.MemberMissing, at + "/colorant", null, Message.Of("colours.entry-without-colorant"),
                Message.Verbatim(catalogue.ColorantNames.Ids)));
            return null;
        }

        return ColorantNamed(entry.Colorant, at + "/colorant", findings) is { } weighed ? new(weighed, percent) : null;
    }

    private (string, decimal?)? Additive(AdditiveEntry? entry, string at, List<Finding> findings)
    {
        var percent = PercentInput.Read(entry?.Percent ?? default, at + "/percent", findings);
        if (string.IsNullOrWhiteSpace(entry?.Additive))
        {
            findings.Add(new(
                FindingCodes.MemberMissing, at + "/additive", null, Message.Of("colours.entry-without-additive"),
                Message.Verbatim(catalogue.AdditiveNames.Ids)));
            return null;
        }

        return Name(catalogue.AdditiveNames, entry.Additive, at + "/additive", findings) is { } id ? (id, percent) : null;
    }

    private AskedColour Finish(
        IReadOnlyList<RecipeColorant> colorants,
        IReadOnlyList<(string, decimal?)> additives,
        Surroundings said,
        string prefix,
        string? word,
        List<Finding> findings)
    {
        var @base = Name(catalogue.BaseNames, said.Base, prefix + "base", findings);
        var atmosphere = Word(catalogue.AtmosphereNames, said.Atmosphere, prefix + "atmosphere", findings);
        var kiln = Word(catalogue.KilnNames, said.Kiln, prefix + "kiln", findings);
        FiringHeat? heat = null;
        if (!said.Cone.IsAbsent)
        {
            if (ConeInput.TryRead(catalogue.Charts.Scale, said.Cone, prefix + "cone", out var cone, out var wrong))
                heat = FiringHeat.Of(cone, catalogue.Charts);
            else findings.Add(wrong!);
        }

        if (findings.Count > 0) throw new RefusedException(findings);
        var recipe = new Recipe(catalogue, colorants, additives, @base ?? catalogue.Bases[ColourCatalogue.AnyBase], heat);
        return new(
            recipe, additives, atmosphere, kiln, word,
            ColourAssumptions.Of(recipe, additives, @base, atmosphere, isBody: prefix.Length > 0));
    }

    // An additive is told where it goes, and not which colorant is spelt like it.
    private WeighedAs? ColorantNamed(string? text, string field, List<Finding> findings)
    {
        if (string.IsNullOrWhiteSpace(text)) return null;
        if (catalogue.ColorantNames.TryRead(text, field, out var weighed, out var finding)) return weighed;
        findings.Add(catalogue.AdditiveNames.TryRead(text, field, out var additive, out _)
            ? finding! with
            {
                Allowed = Message.Verbatim(catalogue.ColorantNames.Ids),
                LikelyMistake = Message.Of("colours.is-additive", ("sent", text), ("additive", additive)),
            }
            : finding!);
        return null;
    }

    private static T? Name<T>(Vocabulary<T> names, string? text, string field, List<Finding> findings)
        where T : class =>
        !string.IsNullOrWhiteSpace(text) && Read(names, text, field, findings, out var value) ? value : null;

    private static T? Word<T>(Vocabulary<T> names, string? text, string field, List<Finding> findings)
        where T : struct, Enum =>
        !string.IsNullOrWhiteSpace(text) && Read(names, text, field, findings, out var value) ? value : null;

    private static bool Read<T>(Vocabulary<T> names, string text, string field, List<Finding> findings, out T value)
        where T : notnull
    {
        if (names.TryRead(text, field, out value, out var finding)) return true;
        findings.Add(finding!);
        return false;
    }

    private readonly record struct Surroundings(string? Base, string? Atmosphere, SentText Cone, string? Kiln);
}
