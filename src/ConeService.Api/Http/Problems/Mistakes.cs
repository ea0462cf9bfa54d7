using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using Microsoft.AspNetCore.Http.Features;
using Microsoft.Extensions.Primitives;

namespace ConeService.Api.Http.Problems;

/// <summary>
/// What was found wrong with a request on its way to an answer: with its query, with the form of its body. What is wrong is left out and
/// the request goes on, so that everything else that is wrong with it is found too. From the first mistake on its answer is thrown away.
/// </summary>
internal sealed class Mistakes
{
    // Far more than are listed; of the rest the number is enough, however large the body.
    private const int MostKept = 1000;

    // What a reader says of an object one of whose members was left out here, although it is there.
    private static readonly HashSet<string> OfAbsence =
    [
        FindingCodes.CoolingAmbiguous, FindingCodes.EmptyRequest, FindingCodes.FiringAmbiguous, FindingCodes.LineEmpty,
        FindingCodes.LogEmpty, FindingCodes.LogTooShort, FindingCodes.LogValueUnreadable, FindingCodes.MemberMissing,
        FindingCodes.ObservationUnreadable, FindingCodes.ProgrammeDoesNothing, FindingCodes.SegmentWithoutTarget,
    ];

    private static readonly string[] OfService = [FindingCodes.InternalError, FindingCodes.TookTooLong, FindingCodes.TooBusy];

    // What is said of one member for want of another that was left out here, although it was sent: code, the last name of the member that
    // it is said of (null: any), the last name of the other, which stands in the same object or above.
    private static readonly (string Code, string? Of, string LeftOut)[] ForWantOf =
    [
        (FindingCodes.MemberMissing, "body", "ownBody"), (FindingCodes.MemberMissing, "glaze", "ownGlaze"),
        (FindingCodes.UnitsMissing, null, "units"), (FindingCodes.TemperatureUnitMissing, null, "units"),
        (FindingCodes.RateUnitMissing, null, "units"), (FindingCodes.StartWithoutOffset, null, "timeZone"),
        (FindingCodes.MemberMissing, "startNotBefore", "start"), (FindingCodes.KilnUnknown, null, "kilns"),
        (FindingCodes.PieceUnknown, null, "pieces"), (FindingCodes.LogDateAmbiguous, null, "dateOrder"),
        (FindingCodes.LogClockChange, null, "timeZone"), (FindingCodes.LogDateAmbiguous, null, "timeZone"),
    ];

    private readonly List<Finding> found = [];
    private readonly HashSet<string> leftOut = new(StringComparer.Ordinal);
    private readonly IHttpResponseBodyFeature? body;
    private readonly KeyValuePair<string, StringValues>[] headers;
    private int more;

    private Mistakes(HttpContext context)
    {
        body = context.Features.Get<IHttpResponseBodyFeature>();
        headers = [.. context.Response.Headers];
        context.Response.Body = Stream.Null;
        context.Features.Set(this);
    }

    /// <summary>The mistakes of a request; null where none was found.</summary>
    public static Mistakes? Of(HttpContext context) => context.Features.Get<Mistakes>();

    /// <summary>True where something is wrong already, and an answer would be made for nothing.</summary>
    public static bool Any(HttpContext context) => Of(context) is not null;

    /// <summary>Takes a mistake.</summary>
    /// <param name="context">The request.</param>
    /// <param name="finding">What is wrong.</param>
    /// <param name="isLeftOut">Whether the request goes on without what stands there.</param>
    public static void Add(HttpContext context, Finding finding, bool isLeftOut = true)
    {
        var mistakes = Of(context) ?? new(context);
        if (mistakes.found.Count >= MostKept) mistakes.more++;
        else
        {
            mistakes.found.Add(finding);
            if (isLeftOut) mistakes.leftOut.Add(finding.Field);
        }
    }

    /// <summary>Takes what makes a whole body unreadable: the request goes on as if it were empty.</summary>
    /// <param name="context">The request.</param>
    /// <param name="finding">What is wrong.</param>
    public static void Unreadable(HttpContext context, Finding finding)
    {
        Add(context, finding, isLeftOut: false);
        Of(context)!.leftOut.Add("");
    }

    /// <summary>Takes a member that nobody knows. Where it is surely another misspelt, that other is there and not missing.</summary>
    /// <param name="context">The request.</param>
    /// <param name="finding">What is wrong.</param>
    /// <param name="meant">Pointer to the member that was meant; null where nothing is near.</param>
    public static void Misspelt(HttpContext context, Finding finding, string? meant)
    {
        Add(context, finding);
        if (meant is not null && Of(context) is { } mistakes && mistakes.leftOut.Count < MostKept) mistakes.leftOut.Add(meant);
    }

    /// <summary>Reads a part of a request, and goes on without it where that is refused.</summary>
    /// <param name="context">The request.</param>
    /// <param name="read">Reads it.</param>
    /// <param name="otherwise">What is taken instead.</param>
    public static T? Try<T>(HttpContext context, Func<T?> read, T? otherwise = default)
    {
        try
        {
            return read();
        }
        catch (RefusedException refused)
        {
            foreach (var finding in refused.Findings) Add(context, finding);
            return otherwise;
        }
    }

    /// <summary>Of an answer that tells what is wrong with single questions: where it is thrown away, that is kept.</summary>
    /// <param name="context">The request.</param>
    /// <param name="problems">What is listed of each question, and how much more there is.</param>
    public static void Keep(HttpContext context, IEnumerable<(IReadOnlyList<Finding> Listed, int More)> problems)
    {
        if (Of(context) is not { } mistakes) return;
        foreach (var (listed, others) in problems)
        {
            mistakes.found.AddRange([.. mistakes.Apart(listed)]);
            mistakes.more += others;
        }
    }

    /// <summary>The mistakes together with what was found last, and how many more there are.</summary>
    /// <param name="context">The request, whose answer is given up.</param>
    /// <param name="last">What ended the request; none where it was answered.</param>
    public (IReadOnlyList<Finding> Findings, int More) With(HttpContext context, IReadOnlyList<Finding> last)
    {
        context.Features.Set(body);
        context.Response.Headers.Clear();
        foreach (var header in headers) context.Response.Headers.Append(header.Key, header.Value);
        // That the service could not answer what it would have refused is of no use to anybody.
        return ([.. found, .. Apart(last).Where(f => !OfService.Contains(f.Code))], more);
    }

    private IEnumerable<Finding> Apart(IReadOnlyList<Finding> findings) => findings.Where(f =>
        !found.Exists(other => other.Field == f.Field && other.Code == f.Code)
        && !leftOut.Any(l => IsWithin(f.Field, l) || (OfAbsence.Contains(f.Code) && IsWithin(l, f.Field)) || IsForWantOf(f, l)));

    private static bool IsForWantOf(Finding finding, string leftOut) => Array.Exists(ForWantOf, w =>
        w.Code == finding.Code && OwnerOf(w.LeftOut, leftOut) is { } owner && (owner.Length == 0 || IsWithin(finding.Field, owner))
        && (w.Of is null || finding.Field == $"{owner}/{w.Of}"));

    // The pointer of the object of whose member of a name something was left out; null where it was of none.
    private static string? OwnerOf(string name, string leftOut)
    {
        var parts = leftOut.Split('/');
        var at = Array.LastIndexOf(parts, name);
        return at < 0 ? null : string.Join('/', parts[..at]);
    }

    // The whole body is the empty text, and owns no parameter.
    private static bool IsWithin(string field, string owner) => field.StartsWith(owner, StringComparison.Ordinal)
        && (field.Length == owner.Length || field[owner.Length] == '/');
}
