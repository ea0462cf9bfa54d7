using System.Net.Http.Headers;
using System.Text;
using System.Text.RegularExpressions;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Contract;

/// <summary>The README's curl lines are asked, and must print what the README says.</summary>
public partial class ReadmeTests(Support.Api api)
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Repository.Root, "README.md"));

    [Fact]
    public async Task The_four_curl_lines_print_what_the_readme_says()
    {
        var examples = Example().Matches(Readme);
        Assert.Equal(4, examples.Count);
        foreach (Match example in examples)
        {
            using var request = Request(example.Groups["command"].Value);
            using var response = await api.Client.SendAsync(request, Support.Api.Cancel);
            var printed = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
            Assert.Equal(example.Groups["output"].Value.TrimEnd('\n'), printed.TrimEnd('\n'));
        }
    }

    [Fact]
    public async Task The_line_for_a_course_page_points_to_a_page_without_script()
    {
        var source = Frame().Match(Readme).Groups["path"].Value;
        using var response = await api.Get(source);
        var html = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("1222", html, StringComparison.Ordinal);
        Assert.DoesNotMatch("<script(?! type=.application/ld)", html);
    }

    // Only what the README uses of curl: -H, --data-binary with $'…', and a quoted address.
    private static HttpRequestMessage Request(string command)
    {
        var address = Address().Match(command).Groups["path"].Value;
        var data = Data().Match(command);
        var request = new HttpRequestMessage(data.Success ? HttpMethod.Post : HttpMethod.Get, address);
        if (data.Success) request.Content = new StringContent(Regex.Unescape(data.Groups["body"].Value), Encoding.UTF8);
        foreach (Match header in Header().Matches(command))
        {
            var (name, value) = (header.Groups["name"].Value, header.Groups["value"].Value);
            if (name == "Content-Type") request.Content!.Headers.ContentType = MediaTypeHeaderValue.Parse(value);
            else request.Headers.Add(name, value);
        }

        return request;
    }

    [GeneratedRegex(@"<!-- example -->\n```console\n\$ (?<command>curl [^\n]*)\n(?<output>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Example();

    [GeneratedRegex("iframe src=\"http://localhost:5000(?<path>[^\"]+)\"")]
    private static partial Regex Frame();

    [GeneratedRegex("'http://localhost:5000(?<path>[^']+)'")]
    private static partial Regex Address();

    [GeneratedRegex(@"--data-binary \$'(?<body>[^']*)'")]
    private static partial Regex Data();

    [GeneratedRegex("-H '(?<name>[^:']+): (?<value>[^']+)'")]
    private static partial Regex Header();
}
