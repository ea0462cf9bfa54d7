using System.Reflection;
using System.Text.Json.Serialization;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Firing.Tests.Contract;

/// <summary>
/// A row is what the data package holds, an answer is what callers were promised: a column that comes or goes must not change an
/// answer by itself. Only the words of closed vocabularies are shared.
/// </summary>
public class RowsAreNotTheContractTests
{
    private static readonly ILookup<Type, string> Exposed = typeof(ConeJson).Assembly.GetExportedTypes()
        .Where(t => !t.IsAssignableTo(typeof(JsonSerializerContext)))
        .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly))
        .SelectMany(p => Inside(p.PropertyType).Select(t => (Type: t, Member: $"{p.DeclaringType!.Name}.{p.Name}")))
        .Where(m => m.Type.Assembly == typeof(Dataset).Assembly && !m.Type.IsEnum)
        .ToLookup(m => m.Type, m => m.Member);

    [Fact]
    public void No_answer_carries_a_row_of_the_data() =>
        Assert.Empty(Exposed.SelectMany(e => e));

    // The type itself and whatever it is made of: IReadOnlyList<T?>, T?, T[], tuples.
    private static IEnumerable<Type> Inside(Type type) =>
        (type.IsArray ? [type.GetElementType()!] : type.GetGenericArguments()).SelectMany(Inside).Append(type);
}
