using ConeService.Client.Tests.Support;
using ConeService.Contract.Answers;

namespace ConeService.Client.Tests;

/// <summary>One suite of questions, asked of the service and of the data of this process.</summary>
public sealed class SameAnswerTests(RunningService service)
{
    public static TheoryData<string> Names => [.. Vectors.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task The_service_and_local_data_answer_with_the_same_bytes_or_the_same_refusal(string name)
    {
        await using var remote = TestClient.Remote(service.Address);
        var ask = Vectors.All[name];

        var (there, here) = (await OutcomeAsync(ask, remote), await OutcomeAsync(ask, TestClients.Local));

        Assert.Equal(there, here);
    }

    [Fact]
    public async Task Of_the_dataset_only_the_code_that_answers_differs()
    {
        await using var remote = TestClient.Remote(service.Address);

        var there = (await remote.Dataset.DescribeAsync(TestContext.Current.CancellationToken)).Value;
        var here = (await TestClients.Local.Dataset.DescribeAsync(TestContext.Current.CancellationToken)).Value;

        Assert.Equal(there.Checksum, here.Checksum);
        Assert.Equal(there.Resources, here.Resources);
        Assert.Equal(there.ChangeLog, here.ChangeLog);
        Assert.Equal(there.DatasetVersion, here.DatasetVersion);
    }

    private static async Task<string> OutcomeAsync(Func<TestClient, CancellationToken, Task<string>> ask, TestClient client)
    {
        try
        {
            return await ask(client, TestContext.Current.CancellationToken);
        }
        catch (RefusedException refused)
        {
            return string.Join("\n", refused.Findings.Select(f =>
                $"{f.Code} at {f.Field}: {f.Value} {f.Message} Allowed: {string.Join("|", f.Allowed)} Likely: {f.LikelyMistake}"));
        }
    }
}

/// <summary>Clients that many tests share.</summary>
internal static class TestClients
{
    public static TestClient Local { get; } = TestClient.Local();
}
