
namespace ConeService.Data.Tests;

public sealed class FaultMessageTests
{
    [Fact]
    public void A_fault_reads_as_a_sentence_with_its_place()
    {
        var fault = new PackageFault("p", "end-points.csv", 12, "celsius", "end-point-rises-with-rate", "is 5");

        Assert.Equal("end-points.csv line 12, field celsius: is 5 (rule end-point-rises-with-rate)", fault.ToString());
        Assert.Equal("end-points.csv: is 5 (rule x)", (fault with { Line = null, Field = null, Rule = "x" }).ToString());
    }

    [Fact]
    public void The_reason_names_the_value_and_what_is_allowed()
    {
        var scenario = new Scenario();
        scenario.Base.Replace("charts.csv", "large", "huge");

        var reason = Assert.Single(Assert.Throws<InvalidPackageException>(scenario.Load).Faults).Reason;

        Assert.Equal("is 'huge'; it must be one of self-supporting, large, small, pce, seger, not-stated", reason);
    }

    [Fact]
    public void All_faults_are_listed_and_the_message_shows_fifty()
    {
        var scenario = new Scenario();
        for (var i = 0; i < 60; i++)
            scenario.Base.Append("sources.csv", $"z{i:00},nonsense,A book,,,n/a,whole");

        var exception = Assert.Throws<InvalidPackageException>(scenario.Load);

        Assert.Equal(60, exception.Faults.Count);
        Assert.Equal(52, exception.Message.Split('\n').Length);
        Assert.EndsWith("… and 10 more", exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_several_kinds_and_tables_are_told_together()
    {
        var scenario = new Scenario();
        scenario.Base.Put("extra.csv", "id\n");
        scenario.Base.Replace("charts.csv", "large", "huge");
        scenario.Base.Replace("end-points.csv", "1888", "1899");
        scenario.Base.Replace("cones.csv", "06,-6,whole,16,", "06,-6,whole,17,");

        var rules = Assert.Throws<InvalidPackageException>(scenario.Load).Faults.Select(f => f.Rule);

        Assert.Equal([FaultRules.Enum, FaultRules.ConePosition, FaultRules.FahrenheitMatchesCelsius, FaultRules.UnlistedFile], rules);
    }
}
