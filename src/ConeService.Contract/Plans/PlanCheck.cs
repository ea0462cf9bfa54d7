using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Plans;

/// <summary>
/// What must hold of a request for a plan before kilns, pieces and moments are judged. Whoever plans asks part by part, so that all that
/// is wrong is told at once, with what only the data and a time zone tell; whoever sends asks for the whole.
/// </summary>
public static class PlanCheck
{
    /// <summary>Checks a request.</summary>
    /// <exception cref="RefusedException">Carries every finding that needs neither data nor a time zone.</exception>
    public static void Require(PlanRequest request)
    {
        List<Finding> findings = [.. Whole(request), .. Spans(request.Staffed, "/staffed")];
        foreach (var (kiln, i) in Listed(request.Kilns, PlanLimits.MostKilns)) findings.AddRange(PlanKilnCheck.Of(kiln, $"/kilns/{i}"));
        if (request.Pieces?.Count <= PlanLimits.MostPieces)
        {
            foreach (var (piece, i) in Listed(request.Pieces, PlanLimits.MostPieces))
                findings.AddRange(PlanPieceCheck.Of(piece, $"/pieces/{i}"));
        }

        findings.AddRange(Given(request.Firings, "/firings"));
        findings.AddRange(Given(request.Announced, "/announced"));
        if (findings.Count > 0) throw new RefusedException(findings);
    }

    /// <summary>How long a plan may be searched for, s.</summary>
    /// <param name="sent">As sent; blank: the usual time.</param>
    /// <exception cref="RefusedException">It is no number, or outside <see cref="PlanLimits.LeastSeconds"/> and
    /// <see cref="PlanLimits.MostSeconds"/>.</exception>
    public static double Seconds(string? sent)
    {
        if (string.IsNullOrWhiteSpace(sent)) return PlanLimits.UsualSeconds;
        return double.TryParse(sent, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var seconds)
            && seconds is >= PlanLimits.LeastSeconds and <= PlanLimits.MostSeconds
            ? seconds
            : throw new RefusedException(new Finding(
                FindingCodes.NumberOutOfRange, "seconds", sent, Message.Of("answers.number-out-of-range", ("value", sent)),
                [
                    Message.Of(
                        "answers.range", ("low", RequestCheck.Text(PlanLimits.LeastSeconds)),
                        ("high", RequestCheck.Text(PlanLimits.MostSeconds))),
                ]));
    }

    /// <summary>What is wrong with a request apart from its kilns, its pieces and what was given, each by itself.</summary>
    internal static IReadOnlyList<Finding> Whole(PlanRequest request)
    {
        var found = new PlanFound();
        if (request.Horizon is not { } horizon) found.Missing("/horizon");
        else
        {
            found.Moment(horizon.From, "/horizon/from");
            found.Moment(horizon.To, "/horizon/to");
        }

        Objective(request.Objective ?? new(), found);
        found.AtMost(request.Staffed?.Count, PlanLimits.MostMoments, "/staffed");
        found.List(
            request.Kilns?.Count, PlanLimits.MostKilns, "/kilns", Message.Of("plans.no-kilns"),
            Message.Of("plans.kilns-allowed", ("most", PlanLimits.MostKilns)));
        var kilns = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (kiln, i) in Listed(request.Kilns, PlanLimits.MostKilns))
        {
            if (kiln?.Kiln?.Id.Text is { } id && !kilns.Add(id)) found.Add(
                FindingCodes.KilnIdRepeated, $"/kilns/{i}/kiln/id", id, Message.Of("plans.kiln-id-repeated", ("id", id)));
        }

        Pieces(request.Pieces, found);
        return found.Findings;
    }

    /// <summary>What is wrong with times of a list.</summary>
    internal static IReadOnlyList<Finding> Spans(IReadOnlyList<PlanSpan?>? sent, string list)
    {
        var found = new PlanFound();
        foreach (var (span, i) in Listed(sent, PlanLimits.MostMoments))
        {
            found.Moment(span?.From, $"{list}/{i}/from");
            found.Moment(span?.To, $"{list}/{i}/to");
        }

        return found.Findings;
    }

    /// <summary>What is wrong with firings that stand or were announced.</summary>
    internal static IReadOnlyList<Finding> Given(IReadOnlyList<GivenFiring?>? sent, string list)
    {
        var found = new PlanFound();
        found.AtMost(sent?.Count, PlanLimits.MostFirings, list);
        foreach (var (firing, i) in Listed(sent, PlanLimits.MostFirings))
        {
            if (firing is null) found.Missing($"{list}/{i}");
            else found.Moment(firing.Start, $"{list}/{i}/start");
            found.AtMost(firing?.Pieces?.Count, PlanLimits.MostPieces, $"{list}/{i}/pieces");
            foreach (var (pieces, j) in Listed(firing?.Pieces, PlanLimits.MostPieces))
                found.Number(pieces?.Count ?? default, 1, PlanLimits.MostPieces, $"{list}/{i}/pieces/{j}/count");
        }

        return found.Findings;
    }

    /// <summary>The entries of a list with their places, as many as are read.</summary>
    internal static IEnumerable<(T? Entry, int Place)> Listed<T>(IReadOnlyList<T?>? sent, int most)
        where T : class => (sent ?? []).Take(most).Select((entry, place) => (entry, place));

    private static void Objective(PlanObjective sent, PlanFound found)
    {
        const string At = "/objective";
        if (sent.Cost is { } word && !EnumWords.TryRead<CostBasis>(word, out _)) found.Add(
            FindingCodes.WordUnknown, At + "/cost", word, Message.Of("plans.word-unknown", ("word", word)),
            [.. Message.Verbatim(EnumWords.All<CostBasis>())]);
        if (sent.Tariff is { } tariff)
        {
            if (tariff.PerKilowattHour is null) found.Missing(At + "/tariff/perKilowattHour");
            if (tariff.Currency is not { } currency) found.Missing(At + "/tariff/currency");
            else if (currency.Length != 3 || !currency.All(char.IsAsciiLetterUpper)) found.Add(
                FindingCodes.TariffWithoutCurrency, At + "/tariff/currency", currency, Message.Of("plans.currency-unreadable"),
                Message.Verbatim("EUR"));
            found.Within<FitTariff>(tariff.PerKilowattHour, nameof(FitTariff.PerKilowattHour), At + "/tariff/perKilowattHour");
        }

        found.Within<PlanObjective>(sent.MinimumFillPercent, nameof(PlanObjective.MinimumFillPercent), At + "/minimumFillPercent");
    }

    private static void Pieces(IReadOnlyList<PlanPiece?>? sent, PlanFound found)
    {
        if (sent is null or []) found.Missing("/pieces");
        if (sent?.Count > PlanLimits.MostPieces) found.TooManyPieces(sent.Count);
        if (sent is null || sent.Count > PlanLimits.MostPieces) return;
        var (ids, all) = (new HashSet<string>(StringComparer.Ordinal), 0);
        for (var i = 0; i < sent.Count; i++)
        {
            if (sent[i]?.Piece is not { } piece) continue;
            if (!piece.Id.IsAbsent && !ids.Add(piece.Id.Text!)) found.Add(
                FindingCodes.PieceIdRepeated, $"/pieces/{i}/piece/id", piece.Id.Text,
                Message.Of("plans.piece-id-repeated", ("id", piece.Id.Text)));
            all += PlanNumbers.Count(piece.Count, PlanLimits.MostPieces) ?? 1;
        }

        if (all > PlanLimits.MostPieces) found.TooManyPieces(all);
    }
}
