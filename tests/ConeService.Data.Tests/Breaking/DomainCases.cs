using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Rows that the schema allows and their meaning forbids.</summary>
internal static class DomainCases
{
    private const string Correction = "end-points,test-chart/04/150,fahrenheit,1958,1959,";

    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Of("a_version_the_change_log_does_not_head", FaultRules.VersionInChangelog, "CHANGELOG.md", 3, null,
            p => p.EditDescriptor(j => j["version"] = "1.0.1")),
        Of("a_change_log_without_versions", FaultRules.VersionInChangelog, "CHANGELOG.md", null, null,
            p => p.Put("CHANGELOG.md", "# Changes\n")),
        Of("a_version_that_is_not_semantic", FaultRules.VersionInChangelog, "datapackage.json", null, "version",
            p => p.EditDescriptor(j => j["version"] = "1.0")),
        Of("a_version_with_a_build_part", FaultRules.VersionInChangelog, "datapackage.json", null, "version",
            p => p.EditDescriptor(j => j["version"] = "1.0.0+mine")),
        Of("fahrenheit_that_is_not_the_celsius", FaultRules.FahrenheitMatchesCelsius, "end-points.csv", 2, "fahrenheit",
            p => p.Replace("end-points.csv", "1888", "1889")),
        Of("an_end_point_that_stays_with_a_faster_rate", FaultRules.EndPointRisesWithRate, "end-points.csv", 3, "celsius",
            p => p.Replace("end-points.csv", "1046,1915", "1031,1888")),
        Of("an_end_point_that_falls_with_the_cone", FaultRules.EndPointRisesWithCone, "end-points.csv", 4, "celsius",
            p => p.Replace("end-points.csv", "1063,1945", "1030,1886")),
        Of("a_published_row_from_a_source_nobody_saw", FaultRules.UnseenSource, "charts.csv", 2, "confidence",
            p => p.Replace("charts.csv", "seen-chart", "recalled")),
        Of("a_published_row_from_common_practice", FaultRules.PracticeSource, "charts.csv", 2, "confidence",
            p => p.Replace("charts.csv", "seen-chart", "common-practice")),
        Of("a_recalled_row_from_common_practice_in_a_list", FaultRules.PracticeSource, "cone-facts.csv", 2, "confidence",
            p => p.Replace("cone-facts.csv", "common-practice,common-practice,", "common-practice,from-memory,")),
        Of("a_cone_at_another_position_than_its_number", FaultRules.ConePosition, "cones.csv", 18, "position",
            p => p.Replace("cones.csv", "\n06,-6,", "\n06,-6.5,")),
        Of("a_half_cone_at_a_whole_position", FaultRules.ConePosition, "cones.csv", 20, "position",
            p => p.Replace("cones.csv", "05.5,-5.5,", "05.5,-5.25,")),
        Of("a_cone_of_another_kind_than_its_number", FaultRules.ConePosition, "cones.csv", 19, "kind",
            p => p.Replace("cones.csv", "06a,-6,seger-letter,", "06a,-6,half,")),
        Of("a_whole_cone_with_another_step", FaultRules.ConePosition, "cones.csv", 18, "whole_step",
            p => p.Replace("cones.csv", "06,-6,whole,16,", "06,-6,whole,17,")),
        Of("a_whole_cone_that_is_missing", FaultRules.ConePosition, "cones.csv", null, "whole_step",
            p => p.Replace("cones.csv", "13,13,whole,34,seen-chart,published,\n", "")),
        Of("a_cone_0", FaultRules.ConePosition, "cones.csv", 26, "id",
            p => p.Replace("cones.csv", "\n1,1,whole", "\n00,0,whole,,seen-chart,published,\n1,1,whole")),
        Of("an_energy_without_two_end_points", FaultRules.EnergyHasEndPoints, "bending-energies.csv", 4, "cone",
            p => p.Append("bending-energies.csv", "test-chart,03,500.5,,derived,derived,")),
        Of("an_energy_of_end_points_that_do_not_rise", FaultRules.EnergyHasEndPoints, "bending-energies.csv", 2, "cone",
            p => p.Replace("end-points.csv", "1046,1915,seen-chart,published,", "1031,1888,seen-chart,published,As printed.")),
        Of("a_chart_without_end_points", FaultRules.ChartHasEndPoints, "charts.csv", 3, "id",
            p => p.Append("charts.csv", "unprinted-chart,Empty,large,regular,yes,no,seen-chart,published,")),
        Of("a_tolerance_whose_range_is_upside_down", FaultRules.ThermocoupleTolerance, "thermocouple-tolerances.csv", 2, "highest_celsius",
            p => p.Replace("thermocouple-tolerances.csv", "1100,0,1600", "1100,1600,0")),
        Of("a_tolerance_that_begins_nowhere", FaultRules.ThermocoupleTolerance, "thermocouple-tolerances.csv", 2, "from_celsius",
            p => p.Replace("thermocouple-tolerances.csv", "1100,0,1600", ",0,1600")),
        Of("a_class_of_another_standard", FaultRules.ThermocoupleTolerance, "thermocouple-tolerances.csv", 2, "class",
            p => p.Replace("thermocouple-tolerances.csv", "iec-60584,1,", "iec-60584,special,")),
        Of("a_heat_work_default_that_is_missing", FaultRules.HeatWorkDefault, "heat-work-defaults.csv", null, "id",
            p => p.Replace("heat-work-defaults.csv", "room,20,°C,Room.,common-practice,common-practice,\n", "")),
        Of("a_heat_work_default_in_another_unit", FaultRules.HeatWorkDefault, "heat-work-defaults.csv", 10, "unit",
            p => p.Replace("heat-work-defaults.csv", "room,20,°C", "room,20,K")),
        Segments("a_segment_without_a_target", "target_celsius", 2, "rise,100,900,,,", "rise,100,,,,"),
        Segments("a_segment_with_two_targets", "target_celsius", 2, "rise,100,900,,,", "rise,100,900,04,,"),
        Segments("a_drop_from_no_cone", "target_below_celsius", 2, "rise,100,900,,,", "rise,100,900,,60,"),
        Segments("published_figures_that_are_not_named", "published_fields", 3, ",as-normal,,rate,", ",as-normal,,,"),
        Segments("published_figures_of_mere_practice", "published_fields", 2, ",open,,,", ",open,,hold,"),
        Reduces("reduction_from_a_cold_kiln", 2, "rise,100,900,,,0,rise,oxidation", "rise,100,900,,,0,rise,reduction"),
        Reduces("reduction_below_dull_red", 3, "rise,100,900,", "rise,100,749,"),
        // 1400 °F, the floor of NFPA 86 as it is recalled, is 760 °C, whatever a source says.
        Of("a_source_that_reduces_below_1400_fahrenheit", FaultRules.ReductionTemperature, "schedule-segments.csv", 3, "atmosphere", p =>
        {
            p.Replace("schedule-segments.csv", "rise,100,900,", "rise,100,759,");
            p.Replace("schedule-segments.csv", "mature,oxidation,,as-normal", "mature,reduction,,as-normal");
        }),
        Reduces("early_reduction_by_practice_alone", 3, "rise,100,900,", "rise,100,859,"),
        Of("a_gap_in_the_numbers_of_segments", FaultRules.TemplateSegments, "schedule-segments.csv", 3, "number",
            p => p.Replace("schedule-segments.csv", "plain,2,", "plain,3,")),
        Templates("a_template_without_segments", "id", 3,
            p => p.Append("schedule-templates.csv", "zero,Nothing,pit,,,,,oxidation,wood,bisqued,,,,,common-practice,common-practice,")),
        Templates("a_template_that_ends_outside_its_range", "end_cone", 2,
            p => p.Replace("schedule-templates.csv", "bisque,04,05,03,", "bisque,04,06,05,")),
        Templates("a_template_with_half_a_range", "end_cone", 2,
            p => p.Replace("schedule-templates.csv", "bisque,04,05,03,", "bisque,04,05,,")),
        Templates("a_template_with_cones_but_no_end_cone", "end_cone", 2,
            p => p.Replace("schedule-templates.csv", "bisque,04,05,03,common-practice,", "bisque,,,,,")),
        Templates("a_template_whose_segments_end_at_another_cone", "end_cone", 2,
            p => p.Replace("schedule-templates.csv", "bisque,04,05,03,", "bisque,05,05,03,")),
        Of("a_thicker_wall_that_goes_faster", FaultRules.ThicknessLimit, "thickness-limits.csv", 3, "rate_celsius_per_hour",
            p => p.Replace("thickness-limits.csv", "drying,50,20,100,25,", "drying,50,20,100,51,")),
        Of("a_band_with_two_spans", FaultRules.ThicknessLimit, "thickness-limits.csv", 3, "from_celsius",
            p => p.Replace("thickness-limits.csv", "drying,50,20,100,25,", "drying,50,20,120,25,")),
        Of("a_kiln_default_that_is_missing", FaultRules.KilnDefault, "kiln-defaults.csv", null, "id",
            p => p.Replace("kiln-defaults.csv", "\nleak,0.0005,kg/(s m2),Meaning.,derived,derived,", "")),
        Of("a_kiln_default_in_another_unit", FaultRules.KilnDefault, "kiln-defaults.csv", 2, "unit",
            p => p.Replace("kiln-defaults.csv", "air-heat,1100,J/(kg K)", "air-heat,1.1,kJ/(kg K)")),
        Of("a_kiln_default_of_0", FaultRules.KilnDefault, "kiln-defaults.csv", 2, "value",
            p => p.Replace("kiln-defaults.csv", "air-heat,1100", "air-heat,0")),
        Of("a_kiln_default_span_that_runs_downwards", FaultRules.KilnDefault, "kiln-defaults.csv", 8, "value",
            p => p.Replace("kiln-defaults.csv", "dehydroxylation-to,650", "dehydroxylation-to,450")),
        Of("a_kiln_wall_without_density", FaultRules.KilnMaterial, "kiln-materials.csv", 3, "density_kilograms_per_cubic_metre",
            p => p.Replace("kiln-materials.csv", "wall,560,", "wall,,")),
        Of("a_kiln_wall_that_does_not_conduct", FaultRules.KilnMaterial, "kiln-materials.csv", 3, "conductivity_constant",
            p => p.Replace("kiln-materials.csv", "560,0.09,", "560,0,")),
        Of("a_load_with_a_conductivity", FaultRules.KilnMaterial, "kiln-materials.csv", 2, "conductivity_constant",
            p => p.Replace("kiln-materials.csv", "load,,,", "load,,1,")),
        Of("kiln_materials_without_clay", FaultRules.KilnMaterial, "kiln-materials.csv", null, "id",
            p => p.Replace("kiln-materials.csv", "fired-clay,load,", "fired-clay,comparison,")),
        Of("a_heat_without_a_smallest_kiln", FaultRules.KilnSize, "kiln-sizes.csv", null, "from_litres",
            p => p.Replace("kiln-sizes.csv", "gas,0,", "gas,10,")),
        Of("a_kiln_size_whose_wall_is_none", FaultRules.KilnSize, "kiln-sizes.csv", 2, "wall_material",
            p => p.Replace("kiln-sizes.csv", "electric,0,test-brick", "electric,0,fired-clay")),
        Corrected("a_correction_of_a_row_that_is_not_there", "key", "end-points,test-chart/03/150,fahrenheit,1958,1959,"),
        Corrected("a_correction_of_a_field_that_is_not_there", "field", "end-points,test-chart/04/150,kelvin,1958,1959,"),
        Corrected("a_correction_of_a_key", "field", "end-points,test-chart/04/150,cone,04,05,"),
        Corrected("a_correction_of_a_value_that_is_not_printed", "printed", "end-points,test-chart/04/150,fahrenheit,1957,1959,"),
        Of("a_correction_of_a_table_that_is_not_there", FaultRules.CorrectionMatches, "corrections.csv", 2, "table", p =>
        {
            p.EditField("corrections", "table", f => f["constraints"]!.AsObject().Remove("enum"));
            p.Replace("corrections.csv", Correction, "kiln-posts,short,fahrenheit,1958,1959,");
        }),
        Adopted("an_adopted_value_that_is_no_number", FaultRules.Type, "hot"),
        Adopted("an_adopted_value_above_the_greatest", FaultRules.Maximum, "3801"),
    ];

    private static BreakingCase Corrected(string name, string field, string row) =>
        Of(name, FaultRules.CorrectionMatches, "corrections.csv", 2, field, p => p.Replace("corrections.csv", Correction, row));

    private static BreakingCase Adopted(string name, string rule, string value) =>
        Of(name, rule, "corrections.csv", 2, "adopted", p => p.Replace("corrections.csv", "1959", value));

    private static BreakingCase Segments(string name, string field, int line, string old, string replacement) =>
        Of(name, FaultRules.SegmentTarget, "schedule-segments.csv", line, field, p => p.Replace("schedule-segments.csv", old, replacement));

    // The second segment of the minimal template reduces where the case does not say otherwise.
    private static BreakingCase Reduces(string name, int line, string old, string replacement) =>
        Of(name, FaultRules.ReductionTemperature, "schedule-segments.csv", line, "atmosphere", p =>
        {
            p.Replace("schedule-segments.csv", old, replacement);
            if (line != 3) return;
            p.Replace(
                "schedule-segments.csv", "mature,oxidation,,as-normal,,rate,seen-chart,published",
                "mature,reduction,,as-normal,,,common-practice,common-practice");
        });

    private static BreakingCase Templates(string name, string field, int line, Action<InMemoryPackage> breakIt) =>
        Of(name, FaultRules.TemplateSegments, "schedule-templates.csv", line, field, breakIt);
}
