using System.Globalization;

namespace ConeService.Contract.Answers;

/// <summary>Where in a request something stands: a pointer into a JSON body, a named parameter, or a line of an upload.</summary>
/// <param name="Pointer">A JSON pointer (RFC 6901); the whole body is the empty text; null elsewhere.</param>
/// <param name="Parameter">The name of a parameter of the path or the query, or of a header; null elsewhere.</param>
/// <param name="Line">A line of an upload, from 1; null elsewhere.</param>
/// <param name="Column">Its column; null where the whole line is meant.</param>
internal readonly record struct SentPlace(string? Pointer, string? Parameter, int? Line, string? Column)
{
    private const string LineWord = "line ";

    /// <summary>Reads a place as findings name it: /kiln/heat, rate, line 3, line 3, cone.</summary>
    public static SentPlace Of(string field)
    {
        if (field.Length == 0 || field[0] == '/') return new(field, null, null, null);
        if (!field.StartsWith(LineWord, StringComparison.Ordinal)) return new(null, field, null, null);
        var rest = field.AsSpan(LineWord.Length);
        var comma = rest.IndexOf(',');
        var line = int.Parse(comma < 0 ? rest : rest[..comma], NumberStyles.None, CultureInfo.InvariantCulture);
        return new(null, null, line, comma < 0 ? null : rest[(comma + 1)..].Trim().ToString());
    }
}
