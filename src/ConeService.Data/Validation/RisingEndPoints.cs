using System.Globalization;

namespace ConeService.Data;

/// <summary>
/// What the two rules on rising end points share: each row must lie above the one before it, unless a note of either explains.
/// </summary>
internal static class RisingEndPoints
{
    public static IEnumerable<PackageFault> Check(IEnumerable<Located<EndPointRow>> ordered, string rule, Func<EndPointRow, string> name)
    {
        Located<EndPointRow>? before = null;
        foreach (var at in ordered)
        {
            if (before is not null && at.Row.Celsius <= before.Row.Celsius && at.Row.Note is null && before.Row.Note is null)
                yield return at.Fault("celsius", rule,
                    string.Create(CultureInfo.InvariantCulture,
                    $"is {at.Row.Celsius} °C at {name(at.Row)}; it must be above {before.Row.Celsius} °C, that of {name(before.Row)} "
                    + $"(line {before.Line}), or a note of one of the two must say why not"));
            before = at;
        }
    }
}
