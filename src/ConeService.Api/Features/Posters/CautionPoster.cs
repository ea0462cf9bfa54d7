using ConeService.Contract.Practice;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Posters;

/// <summary>Cautions for the wall of a kiln room: what can kill or maim, what does lasting harm, and whom to call.</summary>
internal static class CautionPoster
{
    private static readonly string[] Heads = ["What", "When", "What to do"];
    private static readonly double[] Shares = [0.22, 0.36, 0.42];

    public static Poster Of(FiringReference reference)
    {
        var list = reference.Practice.Cautions();
        var critical = list.Items.Where(c => c.Severity == Severity.Critical).ToList();
        var high = list.Items.Where(c => c.Severity == Severity.High).ToList();
        var first = new PosterSheet()
            .Blanks("Emergency number:", "Who answers for the kilns:", "Power is cut at:", "Gas is shut at:")
            .Table("What can kill or maim", Heads, Rows(critical), Shares)
            .Say(list.Notice.ToString(), "warn");
        var second = new PosterSheet().Table("What does serious or lasting harm", Heads, Rows(high), Shares)
            .Say(list.Notice.ToString(), "warn");
        return new(
            "cautions", "Kiln room: what can hurt, and what to do", [first, second], [.. critical.Concat(high).SelectMany(c => c.Sources)]);
    }

    private static List<string[]> Rows(IEnumerable<Caution> cautions) => [.. cautions.Select(c => (string[])[c.Name, c.When, c.Control])];
}
