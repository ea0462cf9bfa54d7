using System.Collections.Concurrent;
using System.ComponentModel.DataAnnotations;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Reflection;

namespace ConeService.Contract.Requests;

/// <summary>
/// The range that is declared of a number beside its member, from where the checks and the OpenAPI document both take it.
/// </summary>
/// <param name="Low">Least.</param>
/// <param name="High">Most.</param>
public readonly record struct Bounds(double Low, double High)
{
    private static readonly ConcurrentDictionary<(Type, string), Bounds> Known = new();

    /// <summary>The range of a member.</summary>
    /// <typeparam name="T">The record that holds it.</typeparam>
    /// <param name="member">Name of the property.</param>
    /// <exception cref="InvalidOperationException">No range is declared of it.</exception>
    public static Bounds Of<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] T>(string member) =>
        Known.TryGetValue((typeof(T), member), out var known) ? known : Known[(typeof(T), member)] = Read(typeof(T), member);

    /// <summary>True when a number lies within, ends included.</summary>
    public bool Contain(double number) => number >= Low && number <= High;

    private static Bounds Read([DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] Type type, string member) =>
        type.GetProperty(member)?.GetCustomAttribute<RangeAttribute>() is { } range
            ? new(Number(range.Minimum), Number(range.Maximum))
            : throw new InvalidOperationException($"{type.Name}.{member} has no range.");

    private static double Number(object value) => Convert.ToDouble(value, CultureInfo.InvariantCulture);
}
