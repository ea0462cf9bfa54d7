namespace ConeService.Data.Tests;

public sealed class DataDictionaryTests
{
    private static readonly string Rendered = DataDictionary.Render(new EmbeddedPackageFiles());

    [Fact]
    public void The_committed_dictionary_is_the_one_generated_from_the_descriptor() =>
        Assert.Equal(Rendered, File.ReadAllText(Path.Combine(Repository.Root, "docs", "data-dictionary.md")));

    [Fact]
    public void A_field_shows_its_unit_and_its_range() =>
        Assert.Contains("| `rate_celsius_per_hour` | number | K/h | no | at least 1; at most 600 |  | Heating rate over the last 100 "
            + "°C; blank where the chart states none. |\n", Rendered, StringComparison.Ordinal);

    [Fact]
    public void A_reference_shows_its_table() =>
        Assert.Contains("| `chart` | string |  | yes |  | charts.id | The chart that prints the cell. |\n", Rendered,
            StringComparison.Ordinal);

    [Fact]
    public void A_bar_in_a_pattern_does_not_end_the_cell() =>
        Assert.Contains(@"| `0?[0-9]{1,2}(\.5\|a)?` |", Rendered, StringComparison.Ordinal);

    [Fact]
    public void Lines_end_with_line_feeds() => Assert.DoesNotContain('\r', Rendered);

    [Fact]
    public void A_broken_descriptor_gives_its_faults()
    {
        var package = MinimalPackage.Create();
        package.EditDescriptor(j => j.AsObject().Remove("version"));

        Assert.Equal("version", Assert.Throws<InvalidPackageException>(() => DataDictionary.Render(package)).Faults.Single().Field);
    }
}
