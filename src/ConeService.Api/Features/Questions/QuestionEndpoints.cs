using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.OpenApi;
using ConeService.Contract.Problems;
using ConeService.Contract.Study;
using ConeService.Contract.Texts;

namespace ConeService.Api.Features.Questions;

/// <summary>Questions to ask a class.</summary>
internal static class QuestionEndpoints
{
    private const string Zip = "application/zip";
    private const string Gift = "text/x-gift";
    private static readonly string[] Versions = ["2.1", "3.0"];

    public static void MapQuestions(this IEndpointRouteBuilder routes) =>
        routes.MapRead("/questions", List).WithQuery("topic", "count", "seed", "qti")
            .Describe("listQuestions", Tags.Study).Answers<QuestionList>(Csv.MediaType, HtmlPage.MediaType, Zip, Gift).Problems(406);

    /// <summary>Questions to ask a class.</summary>
    /// <remarks>Each with one right answer, wrong ones from real confusions (06 for 6, °F for °C, oxidation for reduction), the reason,
    /// and the sources of the right answer: nothing from memory alone, and nothing that could be answered in two ways. The same seed draws
    /// the same questions. Answers JSON; with .csv a table, with .html a sheet to print with its key, with .gift GIFT text, with .zip a QTI
    /// package for course systems.</remarks>
    /// <param name="topic">Topic of the questions: cones-to-temperatures, temperatures-to-cones, hotter-or-cooler, which-ware-survives,
    /// colours-by-atmosphere, what-a-process-does or cautions. Left out: all.</param>
    /// <param name="count">How many, 1 to 100. Left out: 10, said in assumed.</param>
    /// <param name="seed">What they are drawn by, 1 to 1000000. Left out: 1, said in assumed.</param>
    /// <param name="qti">Version of QTI in the package: 2.1 or 3.0. Left out: 2.1.</param>
    /// <param name="request">The request.</param>
    /// <param name="snapshots">The data in use.</param>
    internal static IResult List(
        string? topic, string? count, string? seed, string? qti, HttpRequest request, SnapshotHolder snapshots)
    {
        var type = Negotiation.Choose(request, JsonBody.MediaType, Csv.MediaType, HtmlPage.MediaType, Zip, Gift);
        if (qti is not null && !Versions.Contains(qti))
        {
            Mistakes.Add(request.HttpContext, new(
                FindingCodes.WordUnknown, "qti", qti, Message.Of("questions.qti", ("sent", qti)), Message.Verbatim(Versions)));
        }

        var questions = snapshots.Current.Reference.Study.Questions(topic, count, seed);
        return type switch
        {
            Csv.MediaType => PreparedBody.Text(QuestionCsv.Write(questions), type, negotiated: true),
            HtmlPage.MediaType => PreparedBody.Text(QuestionSheet.Render(questions), type, negotiated: true),
            Gift => PreparedBody.Text(GiftText.Write(questions), type, negotiated: true),
            Zip => new PreparedBody(QtiPackage.Write(questions, qti == "3.0"), type, negotiated: true),
            _ => new PreparedBody(JsonBody.Bytes(questions), "application/json; charset=utf-8", negotiated: true),
        };
    }
}
