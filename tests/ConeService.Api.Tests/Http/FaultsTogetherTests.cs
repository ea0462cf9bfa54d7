using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>No mistake hides another: each case names the places of all its findings, and their codes.</summary>
public class FaultsTogetherTests(Support.Api api)
{
    [Theory]
    // An unknown member, and what is wrong with segments and observations.
    [InlineData(
        "/v1/heat-work", """{"units":"C","foo":1,"segments":[{"rate":60,"target":9999}]}""",
        "/foo unknown-member", "/segments/0/target number-out-of-range")]
    [InlineData(
        "/v1/heat-work", """{"units":"c","segments":[{"rate":-60,"target":1222}],"chart":"nope"}""",
        "/units units-unknown", "/chart chart-unknown", "/segments/0/rate number-out-of-range")]
    [InlineData(
        "/v1/heat-work", """{"units":"X","log":[{"minutes":0,"temperature":20},{"minutes":9}],"atmosphere":"hot"}""",
        "/units units-unknown", "/atmosphere atmosphere-unknown", "/log/1 log-value-unreadable")]
    [InlineData(
        "/v1/heat-work/solve",
        """{"units":"K","cone":"six","find":"it","segments":[{"rate":60},{"rate":60,"target":1222}],"chart":"nope","foo":1}""",
        "/foo unknown-member", "/units units-unknown", "/cone cone-unreadable", "/find find-unknown", "/chart chart-unknown",
        "/segments/0/target segment-without-target")]
    [InlineData(
        "/v1/heat-work/compare",
        """{"units":"c","foo":1,"segments":[{"rate":60,"target":9999}],"observations":[{"cone":"6","clock":40}]}""",
        "/foo unknown-member", "/units units-unknown", "/segments/0/target number-out-of-range",
        "/observations/0/clock number-out-of-range")]
    [InlineData(
        "/v1/heat-work/compare",
        """{"units":"C","segments":[{"rate":60,"target":1222}],"chart":"nope","observations":[{"cone":"6","clock":"4"},{"cone":"6"}]}""",
        "/observations/0/clock number-expected", "/chart chart-unknown", "/observations/1 observation-unreadable")]
    [InlineData(
        "/v1/heat-work/forecast",
        """{"units":"c","cone":"six","log":[{"minutes":0}],"segments":[{"rate":0,"target":1222}],"chart":"nope","foo":1}""",
        "/foo unknown-member", "/units units-unknown", "/cone cone-unreadable", "/chart chart-unknown", "/log/0 log-value-unreadable",
        "/segments/0/rate number-out-of-range")]
    [InlineData(
        "/v1/kilns/calibrate",
        """
        {"units":"c","foo":1,"kiln":{"heat":"steam"},"firings":[{"log":[{"minutes":0}],"segments":[{"rate":60}],
         "observations":[{"cone":"six","look":"down"}]}]}
        """,
        "/foo unknown-member", "/units units-unknown", "/kiln/heat word-unknown", "/firings/0/log/0 log-value-unreadable",
        "/firings/0/segments/0/target segment-without-target", "/firings/0/observations/0/cone cone-unreadable")]
    [InlineData(
        "/v1/schedules/mid-range-glaze/fit",
        """{"units":"c","foo":1,"cone":"six","kiln":{"heat":"electric","volumeLitres":"150"},"load":{"kilogramsWare":-1}}""",
        "/foo unknown-member", "/units units-unknown", "/cone cone-unreadable", "/kiln/volumeLitres number-expected",
        "/load/kilogramsWare kiln-number-out-of-range")]
    [InlineData(
        "/v1/schedules/fit/batch",
        """{"units":"c","foo":1,"items":[{"schedule":"mid-range-glaze","cone":"six"},{"schedule":"mid-range-glaze","clockHand":"4"}]}""",
        "/foo unknown-member", "/items/1/clockHand number-expected", "/units units-unknown", "/items/0/cone cone-unreadable",
        "/items/1/cone member-missing")]
    [InlineData(
        "/v1/conversions", """{"units":"c","foo":1,"lines":[{"cone":"six"},{"cone":"6","rate":"0C/h"}]}""",
        "/foo unknown-member", "/units units-unknown", "/lines/0/cone cone-unreadable", "/lines/1/rate rate-out-of-range")]
    [InlineData(
        "/v1/colours/resolve", """{"foo":1,"colorants":[{"colorant":"nope","percent":-1}],"cone":"six","additives":"tin"}""",
        "/foo unknown-member", "/additives list-expected", "/colorants/0/colorant colorant-unknown",
        "/colorants/0/percent percent-out-of-range", "/cone cone-unreadable")]
    [InlineData(
        "/v1/colours/resolve/batch", """{"foo":1,"items":[{"colorants":[{"colorant":"nope"}]}]}""",
        "/foo unknown-member", "/items/0/colorants/0/colorant colorant-unknown")]
    [InlineData(
        "/v1/pairings/check/batch",
        """{"foo":1,"items":[{"body":7,"firing":{"firingKind":"glaze","cone":"six","atmosphere":"oxidation"}}]}""",
        "/foo unknown-member", "/items/0/body text-expected", "/items/0/firing/cone cone-unreadable")]
    [InlineData(
        "/v1/plans", """{"foo":1,"kilns":"x","pieces":[],"horizon":7}""",
        "/foo unknown-member", "/kilns list-expected", "/horizon object-expected", "/pieces member-missing")]
    [InlineData(
        "/v1/loads/check", """{"foo":1,"kiln":7,"firing":{"firingKind":"glaze","cone":"six","atmosphere":"oxidation"},"pieces":[6]}""",
        "/foo unknown-member", "/kiln object-expected", "/pieces/0 object-expected", "/firing/cone cone-unreadable")]
    // Query and body.
    [InlineData(
        "/v1/plans?seconds=abc&foo=1", """{"kilns":[],"pieces":[],"horizon":{"from":"2026-12-01T00:00Z","to":"2026-12-02T00:00Z"}}""",
        "foo unknown-parameter", "seconds number-out-of-range", "/kilns member-missing", "/pieces member-missing")]
    [InlineData(
        "/v1/loads/check?detail=x",
        """{"kiln":{"heat":"steam"},"firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"},"pieces":[]}""",
        "detail word-unknown", "/kiln/heat word-unknown", "/kiln/atmospheres member-missing", "/kiln/maxCone member-missing",
        "/pieces empty-request")]
    [InlineData("/v1/plans?seconds=abc", "{", "seconds number-out-of-range", "/ malformed-json")]
    [InlineData("/v1/schedules/nope/fit", """{"units":"X","clockHand":"x"}""",
        "schedule not-found", "/units units-unknown", "/clockHand number-expected")]
    // A name that is misspelt is not missing besides.
    [InlineData("/v1/heat-work", """{"unit":"C","segments":[{"rte":60,"taget":1000}]}""",
        "/unit unknown-member", "/segments/0/rte unknown-member", "/segments/0/taget unknown-member")]
    [InlineData("/v1/schedules/bisque-careful/fit",
        """{"units":"C","cone":"06","kiln":{"heat":"steam","kilowatts":-1},"load":{"kilogramsWare":-1}}""",
        "/kiln/heat word-unknown", "/kiln/kilowatts kiln-number-out-of-range", "/load/kilogramsWare kiln-number-out-of-range")]
    [InlineData(
        "/v1/loads/check/batch?detail=x", """{"items":[null]}""", "detail word-unknown", "/items/0 member-missing")]
    [InlineData(
        "/v1/heat-work?units=C&foo=1", """{"units":"C","segments":[{"rate":60}]}""",
        "foo unknown-parameter", "units unknown-parameter", "/segments/0/target segment-without-target")]
    // An object, a list, a null, a truth as text.
    [InlineData(
        "/v1/heat-work", """{"units":"C","segments":[{"rate":{"value":60},"target":null}],"thermocouple":"K","start":true,"log":null}""",
        "/segments/0/rate number-expected", "/segments/0/target segment-without-target", "/thermocouple object-expected",
        "/start number-expected")]
    [InlineData("/v1/heat-work", """{"units":1,"segments":{"rate":60,"target":1000}}""", "/units text-expected", "/segments list-expected")]
    [InlineData("/v1/heat-work", "[]", " object-expected")]
    [InlineData("/v1/heat-work", "null", " object-expected")]
    [InlineData("/v1/heat-work", """{"units":"C","units":"F","segments":[{"rate":60}]}""",
        "/units malformed-json", "/segments/0/target segment-without-target")]
    public async Task Everything_wrong_with_a_body_is_told_at_once(string address, string body, params string[] told)
    {
        using var response = await api.Post(address, body);
        Assert.Equal(told.Order(StringComparer.Ordinal), await Told(response));
    }

    [Theory]
    [InlineData(
        "/v1/heat-work?units=X&chart=nope&thermocoupleType=Q&firings=-1&atmosphere=hot&dateOrder=odd&foo=1",
        "foo unknown-parameter", "units units-unknown", "/chart chart-unknown", "/thermocouple thermocouple-unknown",
        "firings number-out-of-range", "/atmosphere atmosphere-unknown", "dateOrder word-unknown")]
    [InlineData(
        "/v1/heat-work?chart=nope&firings=x&timeZone=Nowhere",
        "/chart chart-unknown", "firings number-out-of-range", "timeZone time-zone-unknown")]
    [InlineData(
        "/v1/heat-work/forecast?units=X&cone=six&segments=a&coolingRate=b&firings=c&chart=nope&dateOrder=odd&start=soon&thermocoupleType=Q",
        "units units-unknown", "cone cone-unreadable", "segments number-out-of-range", "coolingRate number-out-of-range",
        "firings number-out-of-range", "chart chart-unknown", "dateOrder word-unknown", "start start-unreadable",
        "thermocoupleType thermocouple-unknown")]
    public async Task Everything_wrong_with_the_parameters_of_an_upload_is_told_at_once(string address, params string[] told)
    {
        using var response = await api.Post(address, "minutes,temperature_c\n0,20\n300,1000\n400,1200\n", "text/csv");
        Assert.Equal(told.Order(StringComparer.Ordinal), await Told(response));
    }

    [Theory]
    [InlineData("/v1/heat-work?chart=nope&units=X&dateOrder=odd", "/chart chart-unknown", "units units-unknown", "dateOrder word-unknown")]
    [InlineData("/v1/heat-work/forecast?chart=nope&units=C&cone=six", "chart chart-unknown", "cone cone-unreadable")]
    public async Task What_is_wrong_with_an_uploaded_log_is_told_beside_its_parameters(string address, params string[] told)
    {
        using var response = await api.Post(address, "minutes,temperature_c\n0,20\n300,warm\n400,1200\n", "text/csv");
        Assert.Equal(
            told.Append("line 3 log-value-unreadable").Order(StringComparer.Ordinal), await Told(response));
    }

    [Theory]
    [InlineData(
        "/v1/questions?count=0&seed=abc&topic=zzz&qti=9&foo=1",
        "count number-out-of-range", "seed number-out-of-range", "topic topic-unknown", "qti word-unknown", "foo unknown-parameter")]
    [InlineData(
        "/v1/schedules/mid-range-glaze/fit?units=c&clockHand=x&cone=six&kilogramsWare=-1&heat=steam&foo=1",
        "units units-unknown", "clockHand number-expected", "cone cone-unreadable", "kilogramsWare kiln-number-out-of-range",
        "heat word-unknown", "foo unknown-parameter")]
    [InlineData("/v1/cones/six/end-point?rate=&chart=nope&chart=no",
        "cone cone-unreadable", "rate member-missing", "chart repeated-parameter")]
    [InlineData("/v1/schedules/nope?units=X&foo=1", "schedule not-found", "units units-unknown", "foo unknown-parameter")]
    [InlineData("/v1/charts/nope?foo=1", "chart not-found", "foo unknown-parameter")]
    [InlineData("/cards/convert?size=huge&theme=pink&foo=1&cone=0",
        "size word-unknown", "theme word-unknown", "foo unknown-parameter", "cone cone-zero")]
    [InlineData("/oembed?url=/cards/none&maxwidth=x&maxheight=y&foo=1",
        "url not-found", "maxwidth number-expected", "maxheight number-expected", "foo unknown-parameter")]
    [InlineData("/posters/none?paper=b5&foo=1", "poster not-found", "paper word-unknown", "foo unknown-parameter")]
    [InlineData("/v1/pairings/check?body=red-earthenware&cone=six&firingKind=glaze&kind=bisque&atmosphere=smoke",
        "kind repeated-parameter", "cone cone-unreadable", "atmosphere word-unknown")]
    public async Task Everything_wrong_with_a_read_is_told_at_once(string address, params string[] told)
    {
        using var response = await api.Get(address, "application/json");
        Assert.Equal(told.Order(StringComparer.Ordinal), await Told(response));
    }

    [Theory]
    [InlineData("/v1/heat-work", """{"units":"C","segments":[{"rate":"60","target":1222}]}""",
        "/segments/0/rate", "60", "A number in quotation marks: write 60, not \"60\".")]
    [InlineData("/v1/heat-work", """{"units":"C","segments":[{"rate":"6,5","target":1222}]}""", "/segments/0/rate", "6,5", null)]
    [InlineData("/v1/plans", """{"kilns":{"kiln":{}}}""",
        "/kilns", """{"kiln":{}}""", "One alone is a list too: put it in square brackets.")]
    [InlineData("/v1/heat-work", """{"units":7,"segments":[{"rate":60,"target":1222}]}""",
        "/units", "7", "Put it in quotation marks: \"7\".")]
    [InlineData("/v1/loads/check", """{"pieces":[{"count":"12"}]}""",
        "/pieces/0/count", "12", "A number in quotation marks: write 12, not \"12\".")]
    public async Task A_wrong_form_is_told_with_its_likely_mistake(
        string address, string body, string pointer, string value, string? mistake)
    {
        using var response = await api.Post(address, body);
        var finding = Assert.Single(
            (await Support.Api.Read(response, 400)).GetProperty("errors").EnumerateArray(), e => e.Place() == pointer);
        Assert.Equal(value, finding.GetProperty("value").GetString());
        Assert.NotEmpty(finding.GetProperty("allowed").EnumerateArray());
        Assert.Equal(mistake, finding.GetProperty("likelyMistake").GetString());
    }

    [Fact]
    public async Task A_plan_without_kilns_is_told_that_it_needs_one()
    {
        using var response = await api.Post("/v1/plans", """
            {"kilns":[],"horizon":{"from":"2026-12-01T00:00Z","to":"2026-12-02T00:00Z"},
             "pieces":[{"piece":{"id":"mug","body":"red-earthenware","state":"bone-dry",
                                 "size":{"heightMillimetres":100,"widthMillimetres":85}}}]}
            """);
        var finding = Assert.Single(await Problems.Findings(response, 400, "member-missing"));
        Assert.Equal("/kilns", finding.Place());
        Assert.Equal("A plan needs at least one kiln.", finding.GetProperty("message").GetString());
        Assert.Equal(["1 to 20 kilns"], finding.GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task However_many_forms_are_wrong_fifty_are_listed_and_the_others_counted()
    {
        var samples = string.Join(',', Enumerable.Repeat("""{"minutes":"0","temperature":"20"}""", 40_000));
        using var response = await api.Post("/v1/heat-work", $$"""{"units":"C","log":[{{samples}}],"foo":1}""");
        var problem = await Support.Api.Read(response, 400);
        Assert.True(response.Content.Headers.ContentLength < 200_000);
        Assert.Equal(50, problem.GetProperty("errors").GetArrayLength());
        Assert.True(problem.GetProperty("moreErrors").GetInt32() >= 80_001 - 50);
    }

    // The answer that would have been, to a request without its mistakes, leaves nothing behind.
    [Theory]
    [InlineData("application/json")]
    [InlineData("text/html")]
    public async Task A_refusal_has_no_header_of_an_answer(string accept)
    {
        using var response = await api.Send(
            HttpMethod.Get, "/v1/charts?foo=1", accept: accept, headers: [("If-None-Match", "*"), ("Accept-Encoding", "br")]);
        Assert.Equal(400, (int)response.StatusCode);
        Assert.Null(response.Headers.ETag);
        Assert.Equal("no-store", response.Headers.CacheControl?.ToString());
        Assert.NotEqual("application/json", response.Content.Headers.ContentType?.MediaType);
        Assert.NotEmpty(await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
    }

    private static async Task<IEnumerable<string>> Told(HttpResponseMessage response) =>
        (await Support.Api.Read(response, 400)).GetProperty("errors").EnumerateArray()
            .Select(e => $"{e.Place()} {e.GetProperty("code").GetString()}").Order(StringComparer.Ordinal).ToList();
}
