using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Figures;

/// <summary>Figures for an img of a course page, where frames are stripped.</summary>
internal static class FigureEndpoints
{
    private const string Drawn = ".svg";
    private const string Picture = ".png";

    public static void MapFigures(this IEndpointRouteBuilder routes) => routes.MapRead("/figures/{file}", One).WithQuery()
        .WithName("getFigure").WithSummary("A figure as SVG or PNG: chart, colours, ware, cone-6, schedule-mid-range-glaze.")
        .Produces<string>(StatusCodes.Status200OK, HeatWorkFigure.MediaType, FigurePicture.MediaType).ExcludeFromDescription();

    private static PreparedBody One(string file, SnapshotHolder snapshots)
    {
        var isPicture = file.EndsWith(Picture, StringComparison.Ordinal);
        var name = isPicture || file.EndsWith(Drawn, StringComparison.Ordinal) ? Path.GetFileNameWithoutExtension(file) : "";
        // However it is spelled, a cone has one figure.
        if (name.StartsWith("cone-", StringComparison.Ordinal))
            name = "cone-" + snapshots.Current.Reference.Cones.Read(name[5..], "figure");
        // A picture is made when it is first asked for.
        return snapshots.Current.Prepare(isPicture ? "picture/" + name : "figure/" + name, (name, file, isPicture), static (r, x) =>
        {
            var svg = FigureKinds.Draw(r, x.name) ?? throw Unknown(x.file);
            return x.isPicture ? FigurePicture.Draw(svg) : PreparedBody.Text(svg, HeatWorkFigure.MediaType);
        });
    }

    private static RefusedException Unknown(string file) => new(new Finding(
        FindingCodes.NotFound, "figure", file, Message.Of("answers.not-found", ("noun", "figure"), ("id", file)),
        Message.Verbatim(FigureKinds.All.Select(f => f.Name + Drawn))));
}
