using System.Reflection;
using System.Text.Json.Serialization;
using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Json;
using ConeService.Contract.Practice;
using ConeService.Data;

namespace ConeService.Firing.Tests.Contract;

/// <summary>There is one vocabulary of atmospheres; every use of it says which words it may use.</summary>
public class AtmosphereWordsTests
{
    private static readonly List<PropertyInfo> Members = [.. typeof(ConeJson).Assembly.GetExportedTypes()
        .Where(t => !t.IsAssignableTo(typeof(JsonSerializerContext)))
        .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(p => p.PropertyType == typeof(Atmosphere) || p.PropertyType.GetGenericArguments().Contains(typeof(Atmosphere)))];

    [Fact]
    public void Every_member_of_the_contract_says_which_words_it_may_use()
    {
        Assert.NotEmpty(Members);
        Assert.All(Members, m => Assert.True(Use(m) is not null, $"{m.DeclaringType!.Name}.{m.Name}"));
    }

    [Fact]
    public void A_firing_is_given_air_and_a_colour_is_told_in_more()
    {
        Assert.Equal(["oxidation", "neutral", "reduction"], Words(typeof(FiringProcess), nameof(FiringProcess.Atmospheres)));
        Assert.Equal(
            ["oxidation", "neutral", "reduction", "salt-soda", "post-fire-reduction", "local-reduction"],
            Words(typeof(ResolvedColour), nameof(ResolvedColour.Atmosphere)));
        Assert.Equal(
            ["any", "oxidation", "neutral", "reduction", "salt-soda", "post-fire-reduction", "local-reduction"],
            Words(typeof(ColourNote), nameof(ColourNote.Atmosphere)));
    }

    [Fact]
    public void What_the_data_says_is_within_the_words_of_its_use()
    {
        var data = Support.Reference.Dataset;
        Assert.Subset(Atmospheres.OfFirings.ToHashSet(), data.Processes.SelectMany(p => p.Atmospheres).ToHashSet());
        Assert.Subset(Atmospheres.OfColours.ToHashSet(), data.ColourRules.SelectMany(r => r.Atmospheres).ToHashSet());
        Assert.Subset(Atmospheres.OfColourNotes.ToHashSet(), data.ColourNotes.Select(n => n.Atmosphere).ToHashSet());
    }

    private static IEnumerable<string> Words(Type type, string name) =>
        Atmospheres.Of(Use(type.GetProperty(name)!)!.Value).Select(EnumWords.Word);

    private static AtmosphereUse? Use(PropertyInfo member) => member.GetCustomAttribute<AtmosphereWordsAttribute>()?.Use;
}
