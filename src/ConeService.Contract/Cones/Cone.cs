using System.Globalization;

namespace ConeService.Contract.Cones;

/// <summary>
/// A pyrometric cone number. Always text at the edges: 06 and 6 are more than two hundred degrees apart, and as a
/// number they are the same. Ordered as the cones go down: 022 … 01, 1 … 42.
/// </summary>
public readonly record struct Cone : IComparable<Cone>
{
    private Cone(decimal position, bool hasLetter)
    {
        Position = position;
        HasLetter = hasLetter;
    }

    /// <summary>Signed number for sorting: 022 is −22, 05.5 is −5.5, 01 is −1, 1 is 1.</summary>
    public decimal Position { get; }

    /// <summary>True for a Seger number of renewed composition, printed with the letter a.</summary>
    public bool HasLetter { get; }

    /// <summary>True for the cones with a leading zero, which melt below cone 1.</summary>
    public bool IsZeroCone => Position < 0;

    /// <summary>The cone on the other side of the scale's trap: 06 for 6, 6 for 06. It may not exist.</summary>
    public Cone MixUp => new(-Position, HasLetter);

    /// <summary>The same number without the letter, or with it.</summary>
    public Cone WithLetter(bool letter) => new(Position, letter);

    /// <summary>
    /// Makes a cone from its parts. A double zero, cone 0 and fractions other than a half do not exist.
    /// </summary>
    internal static Cone FromParts(bool zero, int number, bool half, bool letter)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        var position = number + (half ? 0.5m : 0m);
        return new(zero ? -position : position, letter);
    }

    /// <summary>A cone from its spelling in the data package, such as <c>05.5</c> or <c>06a</c>.</summary>
    /// <exception cref="FormatException">The text is not such a spelling.</exception>
    public static Cone Parse(string text) =>
        ConeSpelling.TryRead(text, out var cone, out _) && cone.ToString() == text
            ? cone
            : throw new FormatException($"“{text}” is not a cone as this package spells it.");

    /// <inheritdoc/>
    public int CompareTo(Cone other)
    {
        var byPosition = Position.CompareTo(other.Position);
        return byPosition != 0 ? byPosition : HasLetter.CompareTo(other.HasLetter);
    }

    /// <summary>The cone as text: <c>06</c>, <c>05.5</c>, <c>6</c>, <c>06a</c>.</summary>
    public override string ToString()
    {
        var number = Math.Abs(Position).ToString("0.#", CultureInfo.InvariantCulture);
        return (IsZeroCone ? "0" : "") + number + (HasLetter ? "a" : "");
    }

    /// <summary>Melts before.</summary>
    public static bool operator <(Cone left, Cone right) => left.CompareTo(right) < 0;

    /// <summary>Melts after.</summary>
    public static bool operator >(Cone left, Cone right) => left.CompareTo(right) > 0;

    /// <summary>Melts before, or is the same.</summary>
    public static bool operator <=(Cone left, Cone right) => left.CompareTo(right) <= 0;

    /// <summary>Melts after, or is the same.</summary>
    public static bool operator >=(Cone left, Cone right) => left.CompareTo(right) >= 0;
}
