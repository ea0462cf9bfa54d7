using ConeService.Api.Http;

namespace ConeService.Api.Features.Home;

/// <summary>The page at the root: what the service is, and three questions to start with.</summary>
internal static class HomePage
{
    public static void MapHome(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/", Get).WithQuery().WithName("getHome").WithSummary("Where to begin.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();

    private static IResult Get(HttpContext context, ServiceAddress address, SnapshotHolder snapshots)
    {
        Links.Describe(context);
        return snapshots.Current.Prepare("home", address.Prefix(context.Request), static (r, prefix) => HtmlPage.Render("ConeService", $"""
        <h1>ConeService</h1>
        <p>Firing questions of a shared pottery studio, answered from published tables in which every value names its source.
        Data package {HtmlPage.Encode(r.Dataset.VersionId)}.</p>
        <ul>
        {Example(prefix, "/v1/cones/06", "one cone, on every chart")}
        {Example(prefix, "/v1/cones/6/end-point?rate=108F/h", "where it goes down at a heating rate")}
        {Example(prefix, "/v1/temperatures/2232F/cone?rate=108F/h", "which cone a temperature reaches")}
        {Example(prefix, "/cards/cone-6", "a card to embed in a course page")}
        </ul>
        <p>{Link(prefix, Links.Index, "Index")} · {Link(prefix, Links.Documentation, "All addresses")} ·
        {Link(prefix, Links.Document, "OpenAPI")} · {Link(prefix, "/v1/charts", "Charts")} · {Link(prefix, "/v1/sources", "Sources")} ·
        {Link(prefix, "/problems", "Problems")}</p>
        <p class="small">Charts disagree by 5 to 20 °C and kilns by more: let a witness cone decide. Local codes and licensed practice
        decide on kilns, gas and ventilation.</p>
        """));
    }

    private static string Example(string prefix, string address, string what) =>
        $"<li>{Link(prefix, address, address)}: {what}</li>";

    private static string Link(string prefix, string address, string text) =>
        $"<a href=\"{HtmlPage.Encode(prefix + address)}\">{text}</a>";
}
