using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Client.Asking;
using ConeService.Client.Reading;
using ConeService.Client.Tests.Support;
using ConeService.Contract.Json;
using ConeService.Contract.Plans;

namespace ConeService.Client.Tests.Plans;

/// <summary>Plans as they are asked for and read.</summary>
public sealed class PlanTests(RunningService service)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_plan_is_the_one_that_is_answered_over_http()
    {
        await using var client = TestClient.Remote(service.Address);
        using var http = new HttpClient();
        using var body = new ByteArrayContent(new Question<FiringPlan>("/v1/plans", Local: null).With(PlanVectors.One).Body!);
        body.Headers.ContentType = new MediaTypeHeaderValue("application/json");

        var answer = await client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel);
        using var response = await http.PostAsync(new Uri(service.Address, "/v1/plans?seconds=0.5"), body, Cancel);

        Assert.Equal((AnswerOrigin.Service, AwayReason.None), (answer.Origin, answer.Because));
        Assert.Equal(Plan(await response.Content.ReadAsStringAsync(Cancel)), Plan(Encoding.UTF8.GetString(answer.Json.Span)));
        var firing = Assert.Single(answer.Value.Firings);
        Assert.Equal(("small", "glaze", "6"), (firing.KilnId, firing.FiringKind, firing.Cone));
        Assert.Equal(new DateTimeOffset(2026, 12, 4, 18, 0, 0, TimeSpan.FromHours(1)), firing.Start);
        Assert.Equal(8, firing.Layers.Sum(l => l.Pieces.Sum(p => p.Count)));
    }

    [Theory]
    [InlineData("planFirings.minimal")]
    [InlineData("planFirings.full")]
    public async Task What_is_sent_is_what_was_asked_and_the_answer_loses_nothing_when_it_is_read(string example)
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = TestClient.Remote(proxy.Address);
        var request = Vectors.Example<PlanRequest>(example);

        var answer = await client.Plans.PlanAsync(request, 0.5, Cancel);

        var (address, sent) = Assert.Single(proxy.Sent);
        Assert.Equal("/v1/plans?seconds=0.5", address);
        Assert.Equal(
            JsonSerializer.Serialize(request, ConeJson.Options),
            JsonSerializer.Serialize(JsonSerializer.Deserialize<PlanRequest>(sent, ConeJson.Options), ConeJson.Options));
        Assert.NotEmpty(answer.Value.Firings);
        Assert.Equal(Encoding.UTF8.GetString(answer.Json.Span), JsonSerializer.Serialize(answer.Value, ConeJson.Options));
    }

    [Fact]
    public async Task Without_seconds_the_service_searches_as_long_as_it_usually_does()
    {
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = TestClient.Remote(proxy.Address);

        await client.Plans.PlanAsync(PlanVectors.One, cancel: Cancel);

        Assert.Equal("/v1/plans", Assert.Single(proxy.Sent).Address);
    }

    [Fact]
    public async Task Words_and_members_of_a_newer_service_do_no_harm()
    {
        await using var client = TestClient.Remote(service.Address);
        var answer = await client.Plans.PlanAsync(PlanVectors.One, 0.5, Cancel);
        var newer = JsonNode.Parse(answer.Json.Span)!.AsObject();
        newer["fromTomorrow"] = new JsonObject { ["deep"] = 1 };
        newer["firings"]![0]!["why"] = "because-of-the-moon";
        newer["firings"]![0]!["colourOfSmoke"] = "white";
        newer["whatIf"] = JsonNode.Parse(
            """
            [{"change":"another-studio","kilnId":null,"pieces":[],"isBetter":true,"late":0,"undoneFirings":0,"cost":1.5,"message":"x"}]
            """);
        newer["pieces"]![0]!["waits"] = JsonNode.Parse(
            """
            [{"stage":1,"count":2,"from":"2026-12-01T00:00:00+01:00","to":null,"reasons":["no-room","too-heavy"]}]
            """);

        var read = AnswerReader.Read<FiringPlan>(Encoding.UTF8.GetBytes(newer.ToJsonString()));

        Assert.False(Enum.IsDefined(read.Firings[0].Why));
        Assert.False(Enum.IsDefined(Assert.Single(read.WhatIf).Change));
        var reasons = Assert.Single(read.Pieces[0].Waits).Reasons;
        Assert.Equal(WaitReason.NoRoom, reasons[0]);
        Assert.False(Enum.IsDefined(reasons[1]));
        Assert.Equal(answer.Value.Summary, read.Summary);
    }

    // How many calendars were tried is the machine's.
    private static string Plan(string json)
    {
        var plan = JsonNode.Parse(json)!.AsObject();
        Assert.True(plan["summary"]!.AsObject().Remove("steps"));
        return plan.ToJsonString();
    }
}
