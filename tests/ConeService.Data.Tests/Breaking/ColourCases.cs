using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>
/// Rows of the colour tables that say too much, or name what is not there. The minimal package holds none: each case brings its
/// own.
/// </summary>
internal static class ColourCases
{
    private const string Note = "aaa001,ochre,soft,,oxidation,own-glaze,1,2,,published,yellow,yellow,#FFFF00,,,,seen-chart,published,";

    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Colour("a_percentage_that_ends_below_its_start", FaultRules.RangeOrder, "percent_max",
            Note.Replace(",1,2,", ",2,1,", StringComparison.Ordinal)),
        Colour("a_percentage_without_confidence", FaultRules.PercentEvidence, "percent_confidence",
            Note.Replace(",,published,yellow", ",,,yellow", StringComparison.Ordinal)),
        Colour("a_confidence_without_percentage", FaultRules.PercentEvidence, "percent_confidence",
            Note.Replace(",1,2,", ",,,", StringComparison.Ordinal)),
        Colour("a_published_percentage_from_a_source_nobody_saw", FaultRules.PercentEvidence, "percent_confidence",
            Note.Replace("seen-chart,published", "recalled,from-memory", StringComparison.Ordinal)),
        Colour("a_note_that_needs_what_is_not_there", FaultRules.IngredientKnown, "needs",
            Note.Replace("#FFFF00,,,", "#FFFF00,,moonstone,", StringComparison.Ordinal)),
        Colour("a_note_in_an_atmosphere_that_is_not_listed", FaultRules.Enum, "atmosphere",
            Note.Replace("oxidation", "smoke", StringComparison.Ordinal)),
        Colour("a_swatch_that_is_no_colour", FaultRules.Pattern, "swatch", Note.Replace("#FFFF00", "yellow", StringComparison.Ordinal)),
        Colour("a_colour_word_that_is_not_listed", FaultRules.ItemReference, "colour_words",
            Note.Replace(",yellow,#", ",yellowish,#", StringComparison.Ordinal)),
        Of("an_additive_with_the_id_of_a_colorant", FaultRules.IngredientKnown, "additives.csv", 2, "id", p =>
        {
            Colorant(p);
            p.Append("additives.csv", "ochre,Ochre,Fe2O3,,Colours,,seen-chart,published,");
        }),
        Of("a_gas_at_another_heat_than_its_landmark", FaultRules.GasRelease, "gas-releases.csv", 2, "landmark", p =>
        {
            p.Append("landmarks.csv", "lime,Lime decomposes,heating,750,900,,,,,,,,,,,,seen-chart,published,");
            p.Append("gas-releases.csv", "chalk,Chalk,CaCO3 → CaO + CO2,carbon dioxide,750,950,any,,,lime,,,seen-chart,published,");
        }),
        Of("a_gas_that_begins_elsewhere_than_its_limit", FaultRules.GasRelease, "gas-releases.csv", 2, "limit", p =>
        {
            Colorant(p);
            p.Append("temperature-limits.csv", "ochre-oxygen,ochre,gives-off-oxygen-above,,,1230,,Gives off oxygen.,seen-chart,published,");
            p.Append("gas-releases.csv", "ochre,Ochre,6 Fe2O3 → 4 Fe3O4 + O2,oxygen,1390,,any,,,,ochre-oxygen,,seen-chart,published,");
        }),
        Of("a_gas_that_ends_before_it_begins", FaultRules.RangeOrder, "gas-releases.csv", 2, "celsius_high", p =>
            p.Append("gas-releases.csv", "chalk,Chalk,CaCO3 → CaO + CO2,carbon dioxide,900,750,any,,,,,,seen-chart,published,")),
        Of("a_process_without_caution", FaultRules.Required, "processes.csv", 2, "cautions", p =>
        {
            p.Append("processes.csv", "bisque,Bisque,electric,,oxidation,Oxidation,06,04,porous,no,,not-for-food,,no,no,,1,1,8,10,,"
                + "Hardens,Ware,Fumes,,,seen-chart,published,");
        }),
        Of("a_process_whose_cones_run_down", FaultRules.RangeOrder, "processes.csv", 2, "cone_max", p =>
        {
            p.Append("processes.csv", "bisque,Bisque,electric,,oxidation,Oxidation,04,06,porous,no,,not-for-food,,no,no,,1,1,8,10,,"
                + "Hardens,Ware,Fumes,carbon-monoxide,,seen-chart,published,");
        }),
    ];

    private static BreakingCase Colour(string name, string rule, string field, string row) =>
        Of(name, rule, "colour-notes.csv", 2, field, p =>
    {
        Colorant(p);
        p.Append("base-glazes.csv", "soft,Soft glaze,Melts low,,,,,,seen-chart,published,");
        p.Append("colour-words.csv", "yellow,hue,,seen-chart,published,");
        p.Append("colour-notes.csv", row);
    });

    private static void Colorant(InMemoryPackage package)
    {
        package.Append("colorants.csv", "ochre,Ochre,Fe2O3,oxide,low,Dust,carbon-monoxide,,,seen-chart,published,");
    }
}
