using ConeService.Api.Features.Cards;
using ConeService.Api.Http;
using ConeService.Contract.Answers;

namespace ConeService.Api.Features.Home;

/// <summary>The page at the root: what the service is, and three questions to start with.</summary>
internal static class HomePage
{
    public static void MapHome(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/", Get).WithQuery().WithName("getHome").WithSummary("Where to begin.")
            .Produces<string>(StatusCodes.Status200OK, HtmlPage.MediaType).ExcludeFromDescription();

    private static IResult Get(HttpContext context, SnapshotHolder snapshots)
    {
        Links.Describe(context);
        return snapshots.Current.Prepare("home", static r => HtmlPage.Render("ConeService", $"""
        <h1>ConeService</h1>
        <p>Firing questions of a shared pottery studio, answered from tables in which every value
        names its source and how far it can be trusted.
        Data package {HtmlPage.Encode(r.Dataset.VersionId)}.</p>
        <ul>
        {Example("/v1/cones/06", "one cone, on every chart")}
        {Example("/v1/cones/6/end-point?rate=108F/h", "where it goes down at a heating rate")}
        {Example("/v1/temperatures/2232F/cone?rate=108F/h", "which cone a temperature reaches")}
        {Example("/cards/cone-6", "a card to embed in a course page")}
        {Example("/cards", "all cards, with the lines to paste")}
        </ul>
        <p>{Link(Links.Index, "Index")} · {Link(Links.Documentation, "All addresses")} ·
        {Link(Links.Document, "OpenAPI")} · {Link("/v1/charts", "Charts")} · {Link("/v1/sources", "Sources")} ·
        {Link("/problems", "Problems")}</p>
        <p>The data package to take away and to cite: {Link("/v1/tables", "tables")} · {Link("/v1/dataset", "downloads and checksums")} ·
        {Link("/guide/heat-work", "equations")}. {HtmlPage.Encode(FromMemory.Of(r))}</p>
        <p class="small">Charts disagree by 5 to 20 °C and kilns by more: let a witness cone decide. Local codes and licensed practice
        decide on kilns, gas and ventilation.</p>
        <script type="application/ld+json">{DatasetMarkup.Of(r.Dataset)}</script>
        """));
    }

    private static string Example(string address, string what) =>
        $"<li>{Link(address, address)}: {what}</li>";

    private static string Link(string path, string text) =>
        $"<a href=\"{HtmlPage.Encode(new Address(path))}\">{text}</a>";
}
