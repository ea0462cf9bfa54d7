using System.Net;
using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Client.Reading;

/// <summary>Refusals, which are the same exception whoever refused.</summary>
internal static class Refusals
{
    // A status of the service that is not its word: a proxy's, say.
    private const string NotOurs = "NotOurs";

    /// <summary>A local refusal in words, as a remote one comes.</summary>
    public static RefusedException Said(RefusedException refused) => new([.. refused.Findings.Take(Told.MostFindings).Select(f => f with
    {
        Message = Said(f.Message),
        Allowed = [.. f.Allowed.Select(Said)],
        LikelyMistake = f.LikelyMistake is null ? null : Said(f.LikelyMistake),
    })]);

    /// <summary>Refuses what needs no data to be refused, as the service would.</summary>
    /// <exception cref="RefusedException">Carries every finding that needs no data.</exception>
    public static void Require(Action check)
    {
        try
        {
            check();
        }
        catch (RefusedException refused)
        {
            throw Said(refused);
        }
    }

    /// <summary>What a status of 4xx means.</summary>
    /// <param name="body">Its body.</param>
    /// <param name="status">The status.</param>
    /// <param name="route">Method and path.</param>
    public static Exception Read(byte[] body, HttpStatusCode status, string route)
    {
        try
        {
            using var document = JsonDocument.Parse(body);
            Finding[] findings = [.. document.RootElement.GetProperty("errors").EnumerateArray().Select(FindingReader.Read)];
            if (findings is [{ Code: FindingCodes.NotFound, Field: "path" }] or [{ Code: FindingCodes.MethodNotAllowed }])
                return new RouteMissingException(route);
            if (findings.Length > 0) return new RefusedException(findings);
        }
        catch (Exception failure) when (failure is JsonException or InvalidOperationException or KeyNotFoundException or FormatException)
        {
            // Told below: it is somebody else's.
        }

        var away = new ConeServiceAwayException(
            AwayReason.Unreadable, $"{route} was refused with status {(int)status}, and not by the service: it gave no reason.");
        away.Data[NotOurs] = true;
        return away;
    }

    /// <summary>False for a refusal, whoever refused: local data would answer what was not to be answered.</summary>
    public static bool MayBeAnsweredLocally(ConeServiceAwayException away) => !away.Data.Contains(NotOurs);

    private static Message Said(Message message) => Message.Verbatim(message.ToString());
}
