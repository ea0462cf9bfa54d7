using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Firing.Colour;

/// <summary>Turns rows of colour notes into answers.</summary>
internal static class NoteAnswers
{
    // The factor of a form has three digits; more would be noise.
    private const int OxideDigits = 3;

    public static ColourNote Of(ColourNoteRow row, ColourCatalogue catalogue) => new(
        row.Id,
        row.Colorant,
        row.Base,
        row.BaseDetail,
        row.Atmosphere,
        row.SeenOn,
        Percent(row, catalogue),
        row.Colour,
        row.ColourWords,
        new(row.Swatch, Confidence.Estimate),
        row.Condition,
        row.Needs,
        row.Limits,
        row.Sources,
        row.Confidence,
        row.Note);

    /// <summary>The told percentage; null where none is told.</summary>
    public static ToldPercent? Percent(ColourNoteRow row, ColourCatalogue catalogue)
    {
        if (row.PercentMin is not { } min || row.PercentMax is not { } max) return null;
        var form = row.PercentForm is { } id ? catalogue.Forms[id] : null;
        var factor = form?.OxideFactor ?? 1m;
        return new(
            min,
            max,
            form is null ? catalogue.Colorants[row.Colorant].Formula : $"{form.Name} ({form.Formula})",
            form is not null,
            Math.Round(min * factor, OxideDigits),
            Math.Round(max * factor, OxideDigits),
            row.PercentConfidence is Confidence.Published or Confidence.Corroborated,
            row.PercentConfidence!.Value);
    }
}
