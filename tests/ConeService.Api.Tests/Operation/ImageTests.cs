using System.Text.RegularExpressions;
using System.Xml.Linq;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Operation;

/// <summary>The image, as far as it can be told from the files it is made of.</summary>
public sealed partial class ImageTests
{
    private static readonly string Source = Path.Combine(Repository.Root, "src");

    [Fact]
    public void Every_project_that_the_host_is_built_of_is_copied_before_its_packages_are_restored()
    {
        var text = File.ReadAllText(Path.Combine(Repository.Root, "Dockerfile"));
        var copied = CopiedProject().Matches(text[..text.IndexOf("RUN dotnet restore", StringComparison.Ordinal)])
            .Select(m => m.Groups["name"].Value).Order(StringComparer.Ordinal);
        Assert.Equal(Needed("ConeService.Api").Distinct().Order(StringComparer.Ordinal), copied);
    }

    private static IEnumerable<string> Needed(string project) =>
        XDocument.Load(Path.Combine(Source, project, project + ".csproj")).Descendants("ProjectReference")
            .SelectMany(r => Needed(Path.GetFileNameWithoutExtension((string)r.Attribute("Include")!))).Append(project);

    [GeneratedRegex(@"^COPY src/(?<name>[\w.]+)/\k<name>\.csproj src/\k<name>/$", RegexOptions.Multiline)]
    private static partial Regex CopiedProject();
}
