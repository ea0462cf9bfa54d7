using System.Reflection;

namespace ConeService.Data.Tests;

public sealed class BreakingTests
{
    private static readonly IReadOnlyList<BreakingCase> Cases =
        [.. DescriptorCases.All, .. FileCases.All, .. RowCases.All, .. DomainCases.All, .. LoadCases.All, .. OverlayCases.All,
            .. ColourCases.All, .. MessageCases.All, .. TextCases.All, .. EvidenceCases.All];

    public static TheoryData<string> Names => [.. Cases.Select(c => c.Name)];

    [Fact]
    public void The_minimal_package_is_valid() => Assert.Equal("1.0.0", new Scenario().Load().VersionId);

    [Theory]
    [MemberData(nameof(Names))]
    public void One_break_gives_exactly_one_fault_that_says_where(string name)
    {
        var broken = Cases.Single(c => c.Name == name);
        var scenario = new Scenario();
        broken.Break(scenario);

        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(scenario.Load).Faults);

        Assert.Equal((broken.Package, broken.File, broken.Line, broken.Field, broken.Rule),
            (fault.Package, fault.File, fault.Line, fault.Field, fault.Rule));
        Assert.NotEmpty(fault.Reason);
    }

    [Fact]
    public void Every_rule_has_a_break()
    {
        // What computations need is broken only through them: RequirementTests of ConeService.Firing holds it.
        var rules = typeof(FaultRules).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Select(f => (string)f.GetRawConstantValue()!)
            .Except([FaultRules.NeededByComputation]);

        Assert.Equal(rules.Order(StringComparer.Ordinal), Cases.Select(c => c.Rule).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_rule_id_is_kebab_case() =>
        Assert.All(Cases, c => Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", c.Rule));
}
