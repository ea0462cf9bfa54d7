using ConeService.Api.Http;
using ConeService.Api.OpenApi;
using ConeService.Contract.Datasets;

namespace ConeService.Api.Features.Tables;

/// <summary>The tables of the data package as they stand.</summary>
internal static class TableEndpoints
{
    public static void MapTables(this IEndpointRouteBuilder routes)
    {
        routes.MapRead("/tables", List).WithQuery()
            .Describe("listTables", Tags.Data).Answers<TableList>(Csv.MediaType).Problems(406);
        routes.MapRead("/tables/{table}", Find).WithQuery()
            .Describe("getTable", Tags.Data).Answers<TableDetail>(Csv.MediaType).Problems(404, 406);
        routes.MapRead("/tables/{table}/{id}", Row).WithQuery()
            .Describe("getTableRow", Tags.Data).Answers<StoredRowDetail>().Problems(400, 404);
    }

    /// <summary>Every table of the data package.</summary>
    /// <remarks>With the number of its rows; each can be read whole, as JSON or CSV, and row by row.</remarks>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(HttpRequest request, SnapshotHolder snapshots) =>
        ListAnswer.Prepared(request, snapshots.Current, "tables", static r => r.Package.Tables());

    /// <summary>One table with its rows.</summary>
    /// <remarks>As the data package has them, corrections applied; rows of overlays follow. The CSV has the fields as columns and writes a
    /// cone as “cone 06”, which no spreadsheet makes a number of; the file of the package itself stands under /data.</remarks>
    /// <param name="table">Name of the table, from /v1/tables.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Find(string table, HttpRequest request, SnapshotHolder snapshots) => ListAnswer.WantsCsv(request)
        ? snapshots.Current.Prepare("csv table/" + table, table, static (r, t) => TableCsv.Body(r.Package.Table(t), r.Dataset))
        : snapshots.Current.Prepare("table/" + table, table, static (r, t) => JsonBody.Cacheable(r.Package.Table(t)));

    /// <summary>One row of a table.</summary>
    /// <remarks>With its sources and where in them it stands, as far as that was recorded.</remarks>
    /// <param name="table">Name of the table, from /v1/tables.</param>
    /// <param name="id">Key of the row, its parts joined by an at sign, such as witness-self-supporting@06@60.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult Row(string table, string id, SnapshotHolder snapshots) => snapshots.Current.Prepare(
        $"table/{table}/{id}", (table, id), static (r, x) => JsonBody.Cacheable(r.Package.StoredRow(x.table, x.id)));
}
