using System.Globalization;
using ConeService.Api.Features.Figures;
using ConeService.Contract.Plans;

namespace ConeService.Api.Features.Plans;

/// <summary>A plan as bars over the days, a row a kiln.</summary>
internal static class PlanFigure
{
    private const int Left = 110;
    private const int Right = 16;
    private const int Top = 62;
    private const int Row = 44;

    /// <summary>Draws it.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">Its request, for the kilns that are not fired.</param>
    public static string Render(FiringPlan plan, PlanRequest request)
    {
        var kilns = request.Kilns!.Select(k => k!.Kiln!.Id.Text!).ToList();
        var height = Top + (kilns.Count * Row) + 58;
        var told = string.Create(
            CultureInfo.InvariantCulture,
            $"{plan.Firings.Count} firings in {kilns.Count} kilns, {plan.Summary.Late} pieces late, {plan.Summary.Undone} undone.");
        var figure = new Figure("Firing plan", told, height);
        figure.Text(16, 46, told, "s");
        if (plan.Firings.Count > 0) Bars(figure, plan, kilns);
        for (var k = 0; k < kilns.Count; k++) figure.Text(16, Top + (k * Row) + 26, Cut(kilns[k], 14));
        return figure.End(height, $"Room by layers of shelves, acceptance by the load check; data package {plan.DatasetVersion}.");
    }

    private static void Bars(Figure figure, FiringPlan plan, List<string> kilns)
    {
        var from = new DateTimeOffset(plan.Firings.Min(f => f.LoadingFrom).Date, plan.Firings[0].LoadingFrom.Offset);
        var days = Math.Max(1, Math.Ceiling((plan.Firings.Max(f => f.UnloadedAt) - from).TotalDays));
        var step = Math.Max(1, (int)Math.Ceiling(days / 14));
        double X(DateTimeOffset at) => Left + ((at - from).TotalDays / days * (Figure.Width - Left - Right));
        for (var day = 0; day <= days; day += step)
        {
            var x = X(from.AddDays(day));
            figure.Path(string.Create(CultureInfo.InvariantCulture, $"M{x:0.#} {Top}V{Top + (kilns.Count * Row)}"), "g");
            if (day < days)
                figure.Text(x + 2, Top + (kilns.Count * Row) + 16, from.AddDays(day).ToString("d MMM", CultureInfo.InvariantCulture), "s");
        }

        foreach (var firing in plan.Firings)
        {
            var y = Top + (kilns.IndexOf(firing.KilnId) * Row) + 8;
            var (x, end) = (X(firing.LoadingFrom), X(firing.UnloadedAt));
            figure.Field(x, y, Math.Max(2, end - x), Row - 16, Colour(firing.FiringKind));
            if (end - x > 24) figure.Text(x + 3, y + 19, Cut(firing.Cone, (int)((end - x) / 8)), "s");
        }
    }

    // Light enough for words in both.
    private static string Colour(string kind) => kind switch
    {
        "bisque" => "#e8c9a8",
        "glaze" => "#a9c7de",
        _ => "#c7d9b0",
    };

    private static string Cut(string text, int most) => text.Length <= most ? text : most < 2 ? "" : text[..(most - 1)] + "…";
}
