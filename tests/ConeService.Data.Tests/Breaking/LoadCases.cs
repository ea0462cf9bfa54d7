using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Bodies, coats, firings and rules that contradict themselves.</summary>
internal static class LoadCases
{
    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Of("a_bisque_range_upside_down", FaultRules.ConeRange, "clay-bodies.csv", 2, "bisque_cone_max",
            p => p.Replace("clay-bodies.csv", ",06,04,5,", ",04,06,5,")),
        Of("a_range_of_maturity_upside_down", FaultRules.ConeRange, "clay-bodies.csv", 2, "mature_cone_max",
            p => p.Replace("clay-bodies.csv", ",5,6,7,", ",5,6,06,")),
        Of("a_range_of_maturity_given_in_part", FaultRules.ConeRange, "clay-bodies.csv", 2, "mature_cone_max",
            p => p.Replace("clay-bodies.csv", ",5,6,7,", ",5,6,,")),
        Of("a_body_with_a_seger_cone", FaultRules.ConeRange, "clay-bodies.csv", 2, "bisque_cone_min",
            p => p.Replace("clay-bodies.csv", ",06,04,5,", ",06a,04,5,")),
        Of("a_glaze_range_upside_down", FaultRules.ConeRange, "glazes.csv", 2, "cone_best",
            p => p.Replace("glazes.csv", ",5,6,7,", ",5,4,7,")),
        Of("a_glaze_range_given_in_part", FaultRules.ConeRange, "glazes.csv", 2, "cone_max",
            p => p.Replace("glazes.csv", ",5,6,7,", ",5,6,,")),
        Of("a_firing_upside_down", FaultRules.ConeRange, "firing-kinds.csv", 2, "cone_max",
            p => p.Replace("firing-kinds.csv", "bisque,bisque firing,electric;gas,oxidation,note,,06,10,",
            "bisque,bisque firing,electric;gas,oxidation,note,,10,06,")),
        Of("a_rank_that_lost_its_sign", FaultRules.ConeRank, "end-points.csv", 3, "cone_rank",
            p => p.Rank("end-points", "cone", "-5", "5", "-4", "-4")),
        Of("a_rate_in_the_key_that_is_another", FaultRules.RateKey, "end-points.csv", 3, "rate", p => p.KeyRates("60", "180", "60", "150")),
        Of("a_key_without_its_rate", FaultRules.Required, "end-points.csv", 3, "rate", p => p.KeyRates("60", "", "60", "150")),
        Of("a_rank_beside_no_cone", FaultRules.ConeRank, "schedule-segments.csv", 2, "target_cone_rank",
            p => p.Rank("schedule-segments", "target_cone", "0", "-4")),
        Of("a_blank_rank_beside_a_cone", FaultRules.ConeRank, "glazes.csv", 2, "cone_best_rank", p => p.Rank("glazes", "cone_best", "")),
        Of("a_body_that_melts_before_it_slumps", FaultRules.OverfireSteps, "clay-bodies.csv", 2, "melt_cones_over_best",
            p => p.Replace("clay-bodies.csv", ",1,2,3,4,", ",1,2,3,2,")),
        Of("a_body_that_melts_over_no_cone", FaultRules.OverfireSteps, "clay-bodies.csv", 2, "warp_cones_over_best",
            p => p.Replace("clay-bodies.csv", ",5,6,7,", ",,,,")),
        Of("a_disagreement_on_a_table_that_is_not_there", FaultRules.DisagreementConcerns, "disagreements.csv", 2, "concerns",
            p => p.Replace("disagreements.csv", "clay-bodies/test-clay", "clays/test-clay")),
        Of("a_disagreement_on_a_row_that_is_not_there", FaultRules.DisagreementConcerns, "disagreements.csv", 2, "concerns",
            p => p.Replace("disagreements.csv", "clay-bodies/test-clay", "clay-bodies/other-clay")),
        Renamed("an_id_renamed_in_a_table_without_ids", "table", "end-points,old-point,test-chart"),
        Renamed("an_id_renamed_in_a_table_that_is_not_there", "table", "hazards,old-hazard,carbon-monoxide"),
        Renamed("an_old_id_that_is_still_there", "old", "cautions,copper-fume,carbon-monoxide"),
        Renamed("a_new_id_that_is_not_there", "new", "cautions,old-hazard,other-hazard"),
        Of("an_id_renamed_twice_over", FaultRules.RenamedIds, "renamed-ids.csv", 2, "new", p => p.Put("renamed-ids.csv",
            "table,old,new,since\ncautions,old-hazard,older-hazard,1.0.0\ncautions,older-hazard,carbon-monoxide,1.0.0\n")),
        Of("an_old_id_told_twice", FaultRules.PrimaryKey, "renamed-ids.csv", 3, "table/old", p => p.Put("renamed-ids.csv",
            "table,old,new,since\ncautions,old-hazard,carbon-monoxide,1.0.0\ncautions,old-hazard,copper-fume,1.0.0\n")),
    ];

    private static BreakingCase Renamed(string name, string field, string row) =>
        Of(name, FaultRules.RenamedIds, "renamed-ids.csv", 2, field, p => p.Append("renamed-ids.csv", row + ",1.0.0"));
}
