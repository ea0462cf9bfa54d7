namespace ConeService.Data.Tests;

public sealed class CorrectionTests
{
    private readonly Scenario _scenario = new();

    [Fact]
    public void The_adopted_value_stands_in_the_table_and_the_printed_one_in_the_correction()
    {
        var dataset = _scenario.Load();

        Assert.Equal(1959m, dataset.EndPoints[3].Fahrenheit);
        Assert.Equal(("1958", "1959"), (dataset.Corrections[0].Printed, dataset.Corrections[0].Adopted));
    }

    [Fact]
    public void A_print_that_breaks_a_rule_is_mended_by_its_correction()
    {
        _scenario.Base.Replace("end-points.csv", "1958", "19580");
        _scenario.Base.Replace("corrections.csv", "1958", "19580");

        Assert.Equal(1959m, _scenario.Load().EndPoints[3].Fahrenheit);
    }

    [Fact]
    public void An_adopted_value_is_held_to_the_rules_too()
    {
        _scenario.Base.Replace("corrections.csv", "1959", "1960");

        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(_scenario.Load).Faults);

        Assert.Equal((FaultRules.FahrenheitMatchesCelsius, 5), (fault.Rule, fault.Line));
    }

    [Fact]
    public void A_blank_part_of_a_key_is_written_blank()
    {
        _scenario.Base.Replace("end-points.csv", "test-chart,05,60", "test-chart,05,,1001,,seen-chart,published,\ntest-chart,05,60");
        _scenario.Base.Replace("corrections.csv", "end-points,test-chart/04",
            "end-points,test-chart/05/,celsius,1001,1010,Misprint,Arithmetic,seen-chart,published\nend-points,test-chart/04");

        // Keys sort as text: test-chart/04/150 stands before test-chart/05/.
        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(_scenario.Load).Faults);
        Assert.Equal((FaultRules.RowOrder, "key"), (fault.Rule, fault.Field));

        var lines = _scenario.Base.Text("corrections.csv").Split('\n');
        _scenario.Base.Put("corrections.csv", string.Join('\n', lines[0], lines[2], lines[1], ""));
        Assert.Equal(1010m, _scenario.Load().EndPoints[0].Celsius);
    }
}
