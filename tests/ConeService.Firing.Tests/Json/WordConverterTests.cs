using System.Text.Json;
using ConeService.Contract.Cones;
using ConeService.Contract.Json;

namespace ConeService.Firing.Tests.Json;

/// <summary>Every vocabulary has its converter, named in a list that a program compiled ahead of time can follow.</summary>
public class WordConverterTests
{
    [Fact]
    public void Every_vocabulary_of_the_contract_is_written_in_words()
    {
        var lacking = new[] { typeof(Cone).Assembly, typeof(Data.Dataset).Assembly }
            .SelectMany(a => a.GetExportedTypes()).Where(t => t.IsEnum && !WordConverters.Vocabularies.Contains(t)).ToList();

        Assert.Empty(lacking);
    }

    // A word that nobody named would be left out of a program compiled ahead: it fails here, where it is seen.
    [Fact]
    public void A_vocabulary_that_is_not_named_is_refused() =>
        Assert.Throws<NotSupportedException>(() => new WordConverters().CreateConverter(typeof(DayOfWeek), JsonSerializerOptions.Default));
}
