using System.Net.Http.Headers;
using System.Text.Json;
using ConeService.Client.Asking;
using ConeService.Client.Reading;
using ConeService.Client.Tests.Support;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;

namespace ConeService.Client.Tests.Plans;

/// <summary>What can't be planned is refused here as the service refuses it, and not sent where it needs no data.</summary>
public sealed class PlanRefusalTests(RunningService service)
{
    private static readonly PlanRequest Good = PlanVectors.One;

    private static readonly PlanKiln Kiln = Good.Kilns![0]!;

    private static readonly Dictionary<string, (PlanRequest Request, double? Seconds, string Code, string Field)> NotSent = new()
    {
        ["no kiln"] = (Good with { Kilns = [] }, 0.5, FindingCodes.MemberMissing, "/kilns"),
        ["a kiln that is none"] = (Good with { Kilns = [null] }, 0.5, FindingCodes.MemberMissing, "/kilns/0/kiln"),
        ["21 kilns"] = (
            Good with { Kilns = [.. Enumerable.Range(0, 21).Select(i => Kiln with { Kiln = Kiln.Kiln! with { Id = $"{i}" } })] }, 0.5,
            FindingCodes.TooManyItems, "/kilns"),
        ["two kilns of a name"] = (Good with { Kilns = [Kiln, Kiln] }, 0.5, FindingCodes.KilnIdRepeated, "/kilns/1/kiln/id"),
        ["no piece"] = (Good with { Pieces = null }, 0.5, FindingCodes.MemberMissing, "/pieces"),
        ["5,001 pieces, those alike counted"] = (
            Good with { Pieces = [PlanVectors.Mug("a", 5000), PlanVectors.Mug("b", 1)] }, 0.5, FindingCodes.TooManyPieces, "/pieces"),
        ["two pieces of a name"] = (
            Good with { Pieces = [PlanVectors.Mug("a", 1), PlanVectors.Mug("a", 1)] }, 0.5, FindingCodes.PieceIdRepeated,
            "/pieces/1/piece/id"),
        ["a piece without size"] = (
            Good with { Pieces = [new(PlanVectors.Mug("a", 1).Piece! with { Size = null })] }, 0.5, FindingCodes.MemberMissing,
            "/pieces/0/piece/size"),
        ["a piece of no height"] = (
            Good with { Pieces = [new(PlanVectors.Mug("a", 1).Piece! with { Size = new(0, 80) })] }, 0.5, FindingCodes.NumberOutOfRange,
            "/pieces/0/piece/size/heightMillimetres"),
        ["a piece stacked and not said how high"] = (
            Good with { Pieces = [PlanVectors.Mug("a", 1) with { BisqueStack = new(3) }] }, 0.5, FindingCodes.MemberMissing,
            "/pieces/0/bisqueStack/stepMillimetres"),
        ["no horizon"] = (Good with { Horizon = null }, 0.5, FindingCodes.MemberMissing, "/horizon"),
        ["a horizon without end"] = (
            Good with { Horizon = Good.Horizon! with { To = " " } }, 0.5, FindingCodes.MemberMissing, "/horizon/to"),
        ["a filling factor of 7"] = (
            Good with { Kilns = [Kiln with { FillingFactor = 7 }] }, 0.5, FindingCodes.NumberOutOfRange, "/kilns/0/fillingFactor"),
        ["a firing of a minute"] = (
            Good with { Kilns = [Kiln with { Firings = [new("glaze", "6", "oxidation", Minutes: 1, KilowattHours: 90)] }] }, 0.5,
            FindingCodes.NumberOutOfRange, "/kilns/0/firings/0/minutes"),
        ["a time that the kiln is shut from no moment on"] = (
            Good with { Kilns = [Kiln with { Closed = [new("", "2026-12-03T00:00")] }] }, 0.5, FindingCodes.MemberMissing,
            "/kilns/0/closed/0/from"),
        ["somebody there until no moment"] = (
            Good with { Staffed = [new("2026-12-01T00:00", "2026-12-14T00:00"), new("2026-12-14T08:00")] }, 0.5,
            FindingCodes.MemberMissing, "/staffed/1/to"),
        ["a firing that stands and has no start"] = (
            Good with { Firings = [new("small", null, "glaze", "6", "oxidation")] }, 0.5, FindingCodes.MemberMissing, "/firings/0/start"),
        ["501 firings announced"] = (
            Good with { Announced = [.. Enumerable.Repeat(new GivenFiring("small", "2026-12-04T18:00", "glaze", "6", "oxidation"), 501)] },
            0.5, FindingCodes.TooManyItems, "/announced"),
        ["judged by nothing known"] = (
            Good with { Objective = new("beauty") }, 0.5, FindingCodes.WordUnknown, "/objective/cost"),
        ["a price without currency"] = (
            Good with { Objective = new(Tariff: new(0.3)) }, 0.5, FindingCodes.MemberMissing, "/objective/tariff/currency"),
        ["0.4 s"] = (Good, 0.4, FindingCodes.NumberOutOfRange, "seconds"),
        ["31 s"] = (Good, 31, FindingCodes.NumberOutOfRange, "seconds"),
        ["-5 s"] = (Good, -5, FindingCodes.NumberOutOfRange, "seconds"),
        ["no number of seconds"] = (Good, double.NaN, FindingCodes.NumberOutOfRange, "seconds"),
    };

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public static TheoryData<string> Names => [.. NotSent.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task What_needs_no_data_to_be_refused_is_not_sent_and_refused_as_the_service_refuses_it(string name)
    {
        var (request, seconds, code, field) = NotSent[name];
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = TestClient.Remote(proxy.Address);

        var here = await Assert.ThrowsAsync<RefusedException>(() => client.Plans.PlanAsync(request, seconds, Cancel));

        Assert.Equal(0, proxy.Asked);
        Assert.Equal([(code, field)], here.Findings.Select(f => (f.Code, f.Field)));
        Assert.Equal(await OverHttpAsync(request, LogSettings.Text(seconds)), here.Findings.Select(Told));
    }

    [Fact]
    public async Task As_many_findings_are_told_as_the_service_tells()
    {
        var request = Good with
        {
            Pieces = [.. Enumerable.Range(0, 60).Select(i => new PlanPiece(new PieceRequest($"{i}", 1, "mid-range-stoneware-light")))],
        };
        await using var client = TestClient.Remote(service.Address);

        var here = await Assert.ThrowsAsync<RefusedException>(() => client.Plans.PlanAsync(request, 0.5, Cancel));

        Assert.Equal(50, here.Findings.Count);
    }

    [Fact]
    public async Task A_number_that_json_has_no_word_for_is_refused_with_its_place()
    {
        await using var client = TestClient.Remote(service.Address);

        var here = await Assert.ThrowsAsync<RefusedException>(() => client.Plans.PlanAsync(
            Good with { Kilns = [Kiln with { LoadingMinutes = double.NaN }] }, 0.5, Cancel));

        Assert.Equal([(FindingCodes.NumberOutOfRange, "/kilns/0/loadingMinutes")], here.Findings.Select(f => (f.Code, f.Field)));
    }

    [Theory]
    [InlineData("Europe/Atlantis", "10", FindingCodes.TimeZoneUnknown, "/timeZone")]
    [InlineData("Europe/Berlin", "0", FindingCodes.ConeZero, "/kilns/0/kiln/maxCone")]
    public async Task What_the_service_alone_can_refuse_is_refused_by_it_once(string zone, string maxCone, string code, string field)
    {
        var request = Good with
        {
            TimeZone = zone,
            Kilns = [Kiln with { Kiln = Kiln.Kiln! with { MaxCone = maxCone } }],
        };
        await using var proxy = await FaultProxy.StartAsync(service.Address, () => Fault.None);
        await using var client = TestClient.Remote(proxy.Address);

        var there = await Assert.ThrowsAsync<RefusedException>(() => client.Plans.PlanAsync(request, 0.5, Cancel));

        Assert.Equal(1, proxy.Asked);
        Assert.Equal([(code, field)], there.Findings.Select(f => (f.Code, f.Field)));
        Assert.Equal(await OverHttpAsync(request, "0.5"), there.Findings.Select(Told));
    }

    private static string Told(Finding finding) =>
        $"{finding.Code} at {finding.Field}: {finding.Value} {finding.Message} Allowed: {string.Join("|", finding.Allowed)} "
        + $"Likely: {finding.LikelyMistake}";

    private async Task<IEnumerable<string>> OverHttpAsync(PlanRequest request, string? seconds)
    {
        using var http = new HttpClient();
        using var body = new ByteArrayContent(new Question<FiringPlan>("/v1/plans", Local: null).With(request).Body!);
        body.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        using var response = await http.PostAsync(new Uri(service.Address, $"/v1/plans?seconds={seconds}"), body, Cancel);
        using var problem = JsonDocument.Parse(await response.Content.ReadAsByteArrayAsync(Cancel));
        return [.. problem.RootElement.GetProperty("errors").EnumerateArray().Select(e => Told(FindingReader.Read(e)))];
    }
}
