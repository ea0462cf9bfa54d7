using ConeService.Api.Tests.Support;
using CsvHelper;

namespace ConeService.Api.Tests.Features;

/// <summary>What students ask after a lecture on firing is answered by one address, as JSON and as a page.</summary>
public class StudentQuestionTests(Support.Api api)
{
    private const int LeastAnswered = 36;

    [Theory]
    [InlineData("application/json")]
    [InlineData("text/html")]
    public async Task Nearly_all_of_forty_questions_are_answered_by_one_address(string accept)
    {
        using var csv = CsvReader.FromText(
            await File.ReadAllTextAsync(Path.Combine(Repository.Root, "tests/Vectors/questions.csv"), Support.Api.Cancel),
            new CsvReaderOptions { Separator = ',', HasHeader = true });
        var (asked, missed) = (0, new List<string>());
        while (csv.Read())
        {
            asked++;
            using var response = await api.Get(csv.GetString(1), accept);
            var text = System.Net.WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
            // A page has no quotation marks of JSON.
            var words = csv.GetString(2).Split('|').Select(w => accept == "text/html" ? w.Trim('"') : w);
            if (!response.IsSuccessStatusCode || !words.Any(w => text.Contains(w, StringComparison.OrdinalIgnoreCase)))
                missed.Add($"{csv.GetString(0)} {csv.GetString(1)}");
        }

        Assert.Equal(40, asked);
        Assert.True(asked - missed.Count >= LeastAnswered, string.Join('\n', missed));
    }
}
