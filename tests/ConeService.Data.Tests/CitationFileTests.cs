using System.Text.RegularExpressions;

namespace ConeService.Data.Tests;

/// <summary>data/CITATION.cff (Citation File Format 1.2.0) names the package that it lies in.</summary>
public sealed class CitationFileTests
{
    private static readonly string[] Lines = Repository.Data("CITATION.cff").Split('\n');

    // The four members that version 1.2.0 of the format requires.
    [Theory]
    [InlineData("cff-version: 1.2.0")]
    [InlineData("message: ")]
    [InlineData("title: Firing reference for a shared pottery studio")]
    [InlineData("authors:")]
    public void What_the_format_requires_is_there(string line) =>
        Assert.Single(Lines, l => l.StartsWith(line, StringComparison.Ordinal));

    [Fact]
    public void Version_date_and_licence_are_those_of_the_package()
    {
        Assert.Contains($"version: {Repository.Version}", Lines);
        var heading = Regex.Match(Repository.Data("CHANGELOG.md"), @"^## (\S+) - (\S+)$", RegexOptions.Multiline);
        Assert.Equal(Repository.Version, heading.Groups[1].Value);
        Assert.Contains($"date-released: \"{heading.Groups[2].Value}\"", Lines);
        Assert.Contains($"license: {DatasetLoader.LoadEmbedded().License}", Lines);
    }
}
