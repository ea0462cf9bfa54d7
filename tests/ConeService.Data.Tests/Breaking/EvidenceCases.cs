namespace ConeService.Data.Tests;

/// <summary>Labels that are better than what they rest on.</summary>
internal static class EvidenceCases
{
    private const string Chart = "seen-chart,published,";

    private static readonly string[] Seen = ["via", "seen_via", "accessed", "witness"];

    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Of("a_print_whose_note_says_practice", FaultRules.NoteEvidence, "charts.csv", 2, "confidence",
            p => p.Replace("charts.csv", Chart, Chart + "The form is practice.")),
        Of("a_print_whose_note_says_recalled", FaultRules.NoteEvidence, "charts.csv", 2, "confidence",
            p => p.Replace("charts.csv", Chart, Chart + "Recalled in part.")),
        Of("a_print_that_names_a_later_year", FaultRules.CitedYear, "charts.csv", 2, "note",
            p => p.Replace("charts.csv", Chart, Chart + "Changed in 2018.")),
        Of("a_whole_work_seen_in_a_reproduction", FaultRules.SeenThrough, "sources.csv", 5, "seen",
            Sources("reproduction,a mirror,2026-01-01,")),
        Of("a_report_that_is_not_named", FaultRules.SeenThrough, "sources.csv", 5, "seen_via", p =>
        {
            Sources("report,,2026-01-01,")(p);
            p.Replace("sources.csv", "facts only,whole", "facts only,in-part");
        }),
        Of("a_source_that_was_seen_on_no_day", FaultRules.SeenThrough, "sources.csv", 5, "accessed", Sources("work,,,")),
        Of("a_source_that_was_seen_and_recalled", FaultRules.SeenThrough, "sources.csv", 5, "via", Sources("memory,,2026-01-01,")),
        Of("a_print_corroborated_by_one_source", FaultRules.Witnesses, "charts.csv", 2, "confidence",
            p => p.Replace("charts.csv", Chart, "seen-chart,corroborated,")),
        Of("a_print_corroborated_by_a_copy_of_it", FaultRules.Witnesses, "cone-facts.csv", 3, "confidence", p =>
        {
            p.Replace(
                "sources.csv", "n/a,not-applicable\nderived", "n/a,not-applicable\ncopied,chart,A copy,2015,,facts only,whole\nderived");
            p.Replace("cone-facts.csv", "seen-chart;recalled,published", "seen-chart;copied,corroborated");
        }, Columns("not-applicable,,,", "work,,2026-01-01,maker", "not-applicable,,,", "memory,,,", "work,,2026-01-01,maker")),
        Of("a_value_that_is_no_better_than_its_row", FaultRules.ValueConfidence, "charts.csv", 2, "value_confidence",
            p => p.Extend("charts", ["value_confidence"], "title:published")),
        Of("a_value_that_the_row_leaves_blank", FaultRules.ValueConfidence, "charts.csv", 2, "value_confidence", p =>
        {
            p.Replace("charts.csv", Chart, "seen-chart,from-memory,");
            p.Extend("charts", ["value_confidence"], "note:published");
        }),
        Of("a_value_of_a_confidence_that_there_is_not", FaultRules.ValueConfidence, "charts.csv", 2, "value_confidence", p =>
        {
            p.Replace("charts.csv", Chart, "seen-chart,from-memory,");
            p.Extend("charts", ["value_confidence"], "title:certain");
        }),
        Of("a_value_printed_by_a_source_nobody_saw", FaultRules.ValueConfidence, "charts.csv", 2, "value_confidence", p =>
        {
            p.Replace("charts.csv", Chart, "recalled,from-memory,");
            p.Extend("charts", ["value_confidence"], "title:published");
        }),
        Of("a_row_better_than_its_range", FaultRules.ValueConfidence, "clay-bodies.csv", 2, "confidence",
            p => p.Replace("clay-bodies.csv", "seen-chart,published,published,", "seen-chart,common-practice,published,")),
        Of("a_limit_superseded_by_itself", FaultRules.LimitRegister, "exposure-limits.csv", 2, "superseded_by",
            Limit("dust-limit", "2026-01-01", "work")),
        Of(
            "a_limit_checked_from_memory", FaultRules.LimitRegister, "exposure-limits.csv", 2, "checked_on",
            Limit("", "2026-01-01", "memory")),
    ];

    private static BreakingCase Of(
        string name, string rule, string file, int line, string field, Action<InMemoryPackage> breakIt,
        Action<InMemoryPackage>? columns = null) => BreakingCase.Of(name, rule, file, line, field, p =>
        {
            breakIt(p);
            // The rules hold for packages that say how their sources were seen.
            if (!p.Text("sources.csv").Contains("seen_via", StringComparison.Ordinal))
                (columns ?? Sources("work,,2026-01-01,"))(p);
        });

    private static Action<InMemoryPackage> Sources(string last) => Columns("not-applicable,,,", "not-applicable,,,", "memory,,,", last);

    private static Action<InMemoryPackage> Columns(params string[] rows) => p => p.Extend("sources", Seen, rows);

    private static Action<InMemoryPackage> Limit(string by, string on, string via) => p =>
    {
        p.Append("exposure-limits.csv",
            "dust-limit,dust,dust,permissible-exposure-limit,eight-hours,1,,mg/m3,OSHA,usa,legal,2010,,seen-chart,published,");
        p.Extend("exposure-limits", ["superseded_by", "checked_on", "seen_via"], $"{by},{on},{via}");
    };
}
