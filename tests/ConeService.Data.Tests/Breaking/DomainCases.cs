using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Rows that the schema allows and their meaning forbids.</summary>
internal static class DomainCases
{
    private const string Correction = "end-points,test-chart/04/150,fahrenheit,1958,1959,";

    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Of("a_version_the_change_log_does_not_head", FaultRules.VersionInChangelog, "CHANGELOG.md", 3, null, p => p.EditDescriptor(j => j["version"] = "1.0.1")),
        Of("a_change_log_without_versions", FaultRules.VersionInChangelog, "CHANGELOG.md", null, null, p => p.Put("CHANGELOG.md", "# Changes\n")),
        Of("a_version_that_is_not_semantic", FaultRules.VersionInChangelog, "datapackage.json", null, "version", p => p.EditDescriptor(j => j["version"] = "1.0")),
        Of("a_version_with_a_build_part", FaultRules.VersionInChangelog, "datapackage.json", null, "version", p => p.EditDescriptor(j => j["version"] = "1.0.0+mine")),
        Of("fahrenheit_that_is_not_the_celsius", FaultRules.FahrenheitMatchesCelsius, "end-points.csv", 2, "fahrenheit", p => p.Replace("end-points.csv", "1888", "1889")),
        Of("an_end_point_that_stays_with_a_faster_rate", FaultRules.EndPointRisesWithRate, "end-points.csv", 3, "celsius", p => p.Replace("end-points.csv", "1046,1915", "1031,1888")),
        Of("an_end_point_that_falls_with_the_cone", FaultRules.EndPointRisesWithCone, "end-points.csv", 4, "celsius", p => p.Replace("end-points.csv", "1063,1945", "1030,1886")),
        Of("a_published_row_from_a_source_nobody_saw", FaultRules.UnseenSource, "charts.csv", 2, "confidence", p => p.Replace("charts.csv", "seen-chart", "recalled")),
        Of("a_published_row_from_common_practice", FaultRules.PracticeSource, "charts.csv", 2, "confidence", p => p.Replace("charts.csv", "seen-chart", "common-practice")),
        Of("a_recalled_row_from_common_practice_in_a_list", FaultRules.PracticeSource, "cone-facts.csv", 2, "confidence", p => p.Replace("cone-facts.csv", "common-practice,common-practice,", "common-practice,from-memory,")),
        Of("a_cone_at_another_position_than_its_number", FaultRules.ConePosition, "cones.csv", 18, "position", p => p.Replace("cones.csv", "\n06,-6,", "\n06,-6.5,")),
        Of("a_half_cone_at_a_whole_position", FaultRules.ConePosition, "cones.csv", 20, "position", p => p.Replace("cones.csv", "05.5,-5.5,", "05.5,-5.25,")),
        Of("a_cone_of_another_kind_than_its_number", FaultRules.ConePosition, "cones.csv", 19, "kind", p => p.Replace("cones.csv", "06a,-6,seger-letter,", "06a,-6,half,")),
        Of("a_whole_cone_with_another_step", FaultRules.ConePosition, "cones.csv", 18, "whole_step", p => p.Replace("cones.csv", "06,-6,whole,16,", "06,-6,whole,17,")),
        Of("a_whole_cone_that_is_missing", FaultRules.ConePosition, "cones.csv", null, "whole_step", p => p.Replace("cones.csv", "13,13,whole,34,seen-chart,published,\n", "")),
        Of("a_cone_0", FaultRules.ConePosition, "cones.csv", 26, "id", p => p.Replace("cones.csv", "\n1,1,whole", "\n00,0,whole,,seen-chart,published,\n1,1,whole")),
        Of("an_energy_without_two_end_points", FaultRules.EnergyHasEndPoints, "bending-energies.csv", 4, "cone", p => p.Append("bending-energies.csv", "test-chart,03,500.5,derived,derived,")),
        Of("an_energy_of_end_points_that_do_not_rise", FaultRules.EnergyHasEndPoints, "bending-energies.csv", 2, "cone", p => p.Replace("end-points.csv", "1046,1915,seen-chart,published,", "1031,1888,seen-chart,published,As printed.")),
        Of("a_chart_without_end_points", FaultRules.ChartHasEndPoints, "charts.csv", 3, "id", p => p.Append("charts.csv", "unprinted-chart,Empty,large,regular,seen-chart,published,")),
        Corrected("a_correction_of_a_row_that_is_not_there", "key", "end-points,test-chart/03/150,fahrenheit,1958,1959,"),
        Corrected("a_correction_of_a_field_that_is_not_there", "field", "end-points,test-chart/04/150,kelvin,1958,1959,"),
        Corrected("a_correction_of_a_key", "field", "end-points,test-chart/04/150,cone,04,05,"),
        Corrected("a_correction_of_a_value_that_is_not_printed", "printed", "end-points,test-chart/04/150,fahrenheit,1957,1959,"),
        Of("a_correction_of_a_table_that_is_not_there", FaultRules.CorrectionMatches, "corrections.csv", 2, "table", p =>
        {
            p.EditField("corrections", "table", f => f["constraints"]!.AsObject().Remove("enum"));
            p.Replace("corrections.csv", Correction, "glazes,celadon,fahrenheit,1958,1959,");
        }),
        Adopted("an_adopted_value_that_is_no_number", FaultRules.Type, "hot"),
        Adopted("an_adopted_value_above_the_greatest", FaultRules.Maximum, "3801"),
    ];

    private static BreakingCase Corrected(string name, string field, string row) =>
        Of(name, FaultRules.CorrectionMatches, "corrections.csv", 2, field, p => p.Replace("corrections.csv", Correction, row));

    private static BreakingCase Adopted(string name, string rule, string value) =>
        Of(name, rule, "corrections.csv", 2, "adopted", p => p.Replace("corrections.csv", "1959", value));
}
