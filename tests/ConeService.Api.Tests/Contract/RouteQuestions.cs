namespace ConeService.Api.Tests.Contract;

/// <summary>Questions for every route of the document; a route without one fails a test.</summary>
internal static class RouteQuestions
{
    private const string Firing = """ "units":"C","segments":[{"rate":150,"target":1000},{"rate":60,"target":1222,"holdMinutes":10}] """;

    /// <summary>Route of the document, address asked, body of a POST.</summary>
    public static TheoryData<string, string, string?> All { get; } = new()
    {
        { "/v1", "/v1", null },
        { "/v1/charts", "/v1/charts", null },
        { "/v1/charts/{chart}", "/v1/charts/nbs-1926", null },
        { "/v1/charts/{chart}", "/v1/charts/seger-1918", null },
        { "/v1/cones", "/v1/cones", null },
        { "/v1/cones/{cone}", "/v1/cones/06", null },
        { "/v1/cones/{cone}", "/v1/cones/42", null },
        { "/v1/cones/{cone}/end-point", "/v1/cones/6/end-point", null },
        { "/v1/cones/{cone}/end-point", "/v1/cones/6/end-point?rate=33.3C/h", null },
        { "/v1/cones/{cone}/end-point", "/v1/cones/6/end-point?chart=seger-1914", null },
        { "/v1/temperatures/{temperature}/cone", "/v1/temperatures/1000C/cone", null },
        { "/v1/temperatures/{temperature}/cone", "/v1/temperatures/1500C/cone?chart=pce&rate=150C/h", null },
        { "/v1/cone-facts", "/v1/cone-facts", null },
        { "/v1/cone-facts", "/v1/cone-facts?topic=soak", null },
        { "/v1/conversions", "/v1/conversions", """{"lines":[{"cone":"6"},{"temperature":"1222C"},{"cone":0}]}""" },
        { "/v1/heat-work", "/v1/heat-work", $$"""{ {{Firing}},"coolingRate":200}""" },
        {
            "/v1/heat-work", "/v1/heat-work",
            """{"units":"F","log":[{"minutes":0,"temperature":70},{"minutes":600,"temperature":2232}],"chart":"witness-large"}"""
        },
        { "/v1/heat-work/solve", "/v1/heat-work/solve", $$"""{ {{Firing}},"cone":"6","find":"peak"}""" },
        { "/v1/heat-work/compare", "/v1/heat-work/compare", $$"""{ {{Firing}},"observations":[{"cone":"6","clock":4}]}""" },
        {
            "/v1/heat-work/forecast", "/v1/heat-work/forecast",
            """
            {"units":"C","cone":"6",
             "log":[{"minutes":0,"temperature":20},{"minutes":390,"temperature":1000},{"minutes":480,"temperature":1090}],
             "segments":[{"rate":60,"target":1222,"holdMinutes":10}],"kiln":{"heat":"electric","volumeLitres":150},
             "start":"2026-12-07T05:00:00+01:00"}
            """
        },
        {
            "/v1/heat-work/forecast", "/v1/heat-work/forecast",
            """
            {"units":"F","cone":"06",
             "log":[{"minutes":0,"temperature":70},{"minutes":420,"temperature":1750},{"minutes":480,"temperature":1400}],
             "chart":"witness-large","start":"2026-12-07T05:00:00Z"}
            """
        },
        {
            "/v1/plans", "/v1/plans?seconds=0.5",
            """
            {"horizon":{"from":"2026-12-01T00:00","to":"2026-12-15T00:00"},"timeZone":"Europe/Berlin",
             "kilns":[{"kiln":{"id":"small","heat":"electric","maxCone":"10",
             "interior":{"heightMillimetres":500,"diameterMillimetres":450}},
                       "firings":[{"firingKind":"bisque","cone":"06","atmosphere":"oxidation"},
                                  {"firingKind":"glaze","cone":"6","atmosphere":"oxidation"}]}],
             "pieces":[{"piece":{"id":"mug","count":24,"body":"mid-range-stoneware-light","state":"bone-dry",
                                 "size":{"heightMillimetres":100,"widthMillimetres":85}},
                        "then":[{"coats":[{"glaze":"mid-range-gloss"}]}],"due":"2026-12-12T18:00"}]}
            """
        },
        { "/v1/schedules", "/v1/schedules", null },
        { "/v1/schedules/{schedule}", "/v1/schedules/gas-reduction", null },
        { "/v1/schedules/{schedule}", "/v1/schedules/candle?units=F", null },
        { "/v1/schedules/{schedule}/fit", "/v1/schedules/raku-western/fit", """{"units":"C","start":"2026-12-07T05:00:00Z"}""" },
        {
            "/v1/schedules/{schedule}/fit", "/v1/schedules/gas-reduction/fit",
            """
            {"cone":"10","units":"F","kiln":{"heat":"gas","volumeLitres":500},"start":"2026-12-07T05:00:00+01:00",
             "tariff":{"perKilowattHour":0.1,"currency":"GBP"}}
            """
        },
        {
            "/v1/schedules/{schedule}/fit", "/v1/schedules/mid-range-glaze/fit",
            """
            {"cone":"6","units":"C","kiln":{"heat":"electric","volumeLitres":150,"kilowatts":6},"load":{"kilogramsWare":50},
             "start":"2026-12-07T05:00:00+01:00"}
            """
        },
        {
            "/v1/schedules/{schedule}/fit",
            "/v1/schedules/mid-range-glaze/fit?cone=6&units=C&heat=electric&volumeLitres=150&start=2026-12-07T05:00:00Z", null
        },
        {
            "/v1/schedules/{schedule}/fit", "/v1/schedules/mid-range-glaze/fit",
            """
            {"cone":"6","units":"C","kiln":{"heat":"electric","volumeLitres":150},"startNotBefore":"2026-12-07T05:00:00+01:00",
             "finishBy":"2026-12-09T08:00:00+01:00","timeZone":"Europe/Berlin",
             "tariff":{"perKilowattHour":0.36,"currency":"EUR","periods":[{"from":"22:00","to":"06:00","perKilowattHour":0.18}]}}
            """
        },
        { "/v1/schedules/{schedule}/fit", "/v1/schedules/candle/fit?units=F&start=2026-12-07T05:00:00Z", null },
        {
            "/v1/schedules/fit/batch", "/v1/schedules/fit/batch",
            """
            {"units":"C","kiln":{"heat":"electric","volumeLitres":150},
             "items":[{"schedule":"mid-range-glaze","cone":"6"},{"schedule":"none"},{}]}
            """
        },
        {
            "/v1/kilns/calibrate", "/v1/kilns/calibrate",
            """
            {"units":"F","kiln":{"heat":"electric","volumeLitres":150},
             "firings":[{"log":[{"minutes":0,"temperature":70},{"minutes":420,"temperature":1830},{"minutes":600,"temperature":1250},
                                {"minutes":840,"temperature":820},{"minutes":1200,"temperature":480}],"meterKilowattHours":40}]}
            """
        },
        { "/v1/clay-bodies", "/v1/clay-bodies", null },
        { "/v1/clay-bodies", "/v1/clay-bodies?cone=6", null },
        { "/v1/clay-bodies/{id}", "/v1/clay-bodies/red-earthenware", null },
        { "/v1/glazes", "/v1/glazes", null },
        { "/v1/glazes/{id}", "/v1/glazes/celadon", null },
        {
            "/v1/loads/check", "/v1/loads/check",
            """
            {"kiln":{"heat":"electric","maxCone":"8","atmospheres":["oxidation"]},
             "firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"},
             "pieces":[{"id":"bowl","body":"mid-range-stoneware-light","state":"bisqued","coats":[{"glaze":"mid-range-gloss"}]},
                       {"id":"mug","body":"red-earthenware","state":"bisqued"}]}
            """
        },
        {
            "/v1/loads/check/batch", "/v1/loads/check/batch?detail=verdicts",
            """
            {"items":[{"kiln":{"heat":"electric","maxCone":"8"},"firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"},
             "pieces":[{"id":"bowl","body":"mid-range-stoneware-light","state":"bisqued","coats":["mid-range-gloss"]},
                       {"id":"mug","body":"red-earthenware","state":"bisqued"}]},{"pieces":[]},null]}
            """
        },
        {
            "/v1/pairings/check",
            "/v1/pairings/check?body=mid-range-stoneware-light&glaze=mid-range-gloss&cone=06&atmosphere=oxidation&kind=glaze", null
        },
        {
            "/v1/pairings/check", "/v1/pairings/check",
            """
            {"body":"mid-range-stoneware-light","coats":[{"glaze":"mid-range-gloss"}],
             "firing":{"firingKind":"glaze","cone":"06","atmosphere":"oxidation"}}
            """
        },
        {
            "/v1/pairings/check/batch", "/v1/pairings/check/batch",
            """
            {"items":[{"body":"mid-range-stoneware-light","firing":{"firingKind":"glaze","cone":"06","atmosphere":"oxidation"}},
                      {"body":"mid-range-stoneware-light"},null]}
            """
        },
        { "/v1/reason-codes", "/v1/reason-codes", null },
        { "/v1/load-rules", "/v1/load-rules", null },
        { "/v1/load-rules/{id}", "/v1/load-rules/body-stands-glaze-cone", null },
        { "/v1/firing-kinds", "/v1/firing-kinds", null },
        { "/v1/disagreements", "/v1/disagreements", null },
        { "/v1/search", "/v1/search?q=black%20core", null },
        { "/v1/search", "/v1/search?q=hotter%20012%20or%2006", null },
        { "/v1/search", "/v1/search?q=cndling", null },
        { "/v1/questions", "/v1/questions?seed=3", null },
        { "/v1/questions", "/v1/questions?topic=cautions&count=5", null },
        { "/v1/faults", "/v1/faults", null },
        { "/v1/faults", "/v1/faults?stage=use", null },
        { "/v1/faults/{id}", "/v1/faults/dunting", null },
        { "/v1/landmarks", "/v1/landmarks", null },
        { "/v1/landmarks", "/v1/landmarks?phase=cooling", null },
        { "/v1/landmarks/{id}", "/v1/landmarks/bound-water-kaolin", null },
        { "/v1/landmarks/{id}", "/v1/landmarks/carbon-sulphur", null },
        { "/v1/glossary", "/v1/glossary", null },
        { "/v1/glossary/{id}", "/v1/glossary/soaking", null },
        { "/v1/colorants", "/v1/colorants", null },
        { "/v1/colorants/{id}", "/v1/colorants/copper", null },
        { "/v1/colours", "/v1/colours", null },
        { "/v1/colours", "/v1/colours?colorant=copper&percent=0.5&cone=10&kiln=electric", null },
        {
            "/v1/colours/resolve", "/v1/colours/resolve",
            """
            {"colorants":[{"colorant":"copper","percent":0.5}],"additives":[{"additive":"tin oxide","percent":1}],"base":"calcium",
             "cone":"10","atmosphere":"reduction"}
            """
        },
        {
            "/v1/colours/resolve/batch", "/v1/colours/resolve/batch",
            """{"items":[{"colorants":[{"colorant":"copper"}]},{"colorants":[]}]}"""
        },
        { "/v1/processes", "/v1/processes", null },
        { "/v1/processes", "/v1/processes?kiln=gas&atmosphere=reduction", null },
        { "/v1/processes/{id}", "/v1/processes/salt", null },
        { "/v1/cautions", "/v1/cautions", null },
        { "/v1/cautions", "/v1/cautions?appliesTo=lead&stage=mixing", null },
        { "/v1/cautions/{id}", "/v1/cautions/lead-and-cadmium", null },
        { "/v1/limits", "/v1/limits", null },
        { "/v1/limits", "/v1/limits?jurisdiction=eu&substance=lead", null },
        { "/v1/limits/{id}", "/v1/limits/silica-osha-pel", null },
        { "/v1/limits/{id}", "/v1/limits/exceedance-rule-eu", null },
        { "/v1/dataset", "/v1/dataset", null },
        { "/v1/charts/{chart}/cells/{cone}@{rate}", "/v1/charts/witness-self-supporting/cells/06@60", null },
        { "/v1/charts/{chart}/cells/{cone}@{rate}", "/v1/charts/seger-1918/cells/010a@unstated", null },
        { "/v1/tables", "/v1/tables", null },
        { "/v1/tables/{table}", "/v1/tables/cone-facts", null },
        { "/v1/tables/{table}/{id}", "/v1/tables/end-points/seger-1918@010a@unstated", null },
        { "/v1/tables/{table}/{id}", "/v1/tables/messages/answers.not-found@anyone@en", null },
        { "/v1/dataset/changes", "/v1/dataset/changes?from=1.6.0", null },
        { "/v1/equations", "/v1/equations", null },
        { "/v1/equations/{id}", "/v1/equations/cone-curve", null },
        { "/v1/sources", "/v1/sources", null },
        { "/v1/sources/{id}", "/v1/sources/common-practice", null },
        { "/cards/{card}", "/cards/cone-6", null },
        { "/health/live", "/health/live", null },
        { "/health/ready", "/health/ready", null },
    };
}
