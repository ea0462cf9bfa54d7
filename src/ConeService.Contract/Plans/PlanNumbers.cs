using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Plans;

/// <summary>Reads numbers of a plan's request: null for what was left out and for what <see cref="PlanCheck"/> finds wrong.</summary>
internal static class PlanNumbers
{
    /// <summary>The longest length of ware, kiln or shelf, mm.</summary>
    public const int MostMillimetres = 5000;

    /// <summary>A number within the range that is declared of its member.</summary>
    public static double? Within<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] T>(
        double? sent, string member) => sent is { } number && Bounds.Of<T>(member).Contain(number) ? number : null;

    /// <summary>A length, mm.</summary>
    public static decimal? Millimetres(SentText sent) =>
        sent.Kind == SentKind.Number && decimal.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var length)
        && length is > 0 and <= MostMillimetres ? length : null;

    /// <summary>A count, from 1.</summary>
    public static int? Count(SentText sent, int most) =>
        int.TryParse(sent.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= 1 && count <= most
            ? count
            : null;
}
