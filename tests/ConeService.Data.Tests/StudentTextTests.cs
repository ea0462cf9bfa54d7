using System.Text.RegularExpressions;

namespace ConeService.Data.Tests;

/// <summary>
/// What students are told of the rows. How hard it reads is measured by the Automated Readability Index of Senter and Smith
/// (AMRL-TR-66-220, Wright-Patterson Air Force Base, 1967): 4.71 characters a word + 0.5 words a sentence - 21.43, which is about the
/// school grade in the USA. It counts letters and words and knows nothing of meaning: a short rare word counts as easy.
/// </summary>
public sealed partial class StudentTextTests
{
    // The first year after school is grade 13; a table as a whole should read as at school.
    private const double FirstYear = 13;
    private const double School = 9;

    private static readonly Dataset Embedded = DatasetLoader.LoadEmbedded();

    private static readonly IReadOnlyList<TextRow> Texts =
        [.. Embedded.Texts.Where(t => t is { Audience: MessageAudience.Student, Language: "en" })];

    public static TheoryData<string, int> Rows => new()
    {
        { "cautions", Embedded.Cautions.Count },
        { "clay-bodies", Embedded.ClayBodies.Count },
        { "colorants", Embedded.Colorants.Count },
        { "colour-notes", Embedded.ColourNotes.Count },
        { "cone-facts", Embedded.ConeFacts.Count },
        { "glazes", Embedded.Glazes.Count },
        { "processes", Embedded.Processes.Count },
    };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_row_is_told_to_students_in_words_of_their_first_year(string table, int rows)
    {
        var told = Texts.Where(t => t.Table == table).ToList();
        Assert.Equal(rows, told.Count);
        Assert.All(told, t => Assert.True(Index(t.Text) <= FirstYear, $"{t.Row} reads at grade {Index(t.Text):0.0}: {t.Text}"));
        Assert.InRange(told.Average(t => Index(t.Text)), double.MinValue, School);
        Assert.All(told, t => Assert.Matches("^[A-Z].*[.]$", t.Text));
    }

    [Fact]
    public void The_measure_tells_an_archivists_sentence_from_a_students()
    {
        // 14 words of 109 letters in one sentence: 4.71 x 7.79 + 7 - 21.43 = 22.2.
        const string archivist = "Exposure recommendations concerning respirable manganese particulates "
            + "considerably undercut longstanding occupational legislation throughout several jurisdictions, evidently.";
        Assert.True(Index(archivist) > FirstYear);
        // 4 words of 16 letters: 4.71 x 4 + 2 - 21.43 = -0.59.
        Assert.Equal(-0.59, Index("Wipe the bench down."), 2);
    }

    [Fact]
    public void A_colour_is_told_with_as_much_trust_as_its_row() => Assert.All(Embedded.ColourNotes, note =>
    {
        var text = Texts.Single(t => t.Table == "colour-notes" && t.Row == note.Id).Text;
        Assert.Equal(
            note.ColourConfidence == Confidence.Published, text.Contains("One printed source", StringComparison.OrdinalIgnoreCase));
        Assert.Equal(note.ColourConfidence == Confidence.FromMemory, text.Contains("from memory", StringComparison.Ordinal));
        Assert.Equal(note.ColourConfidence == Confidence.CommonPractice, text.Contains("from practice", StringComparison.Ordinal));
    });

    [Fact]
    public void A_caution_says_what_it_is_whom_it_meets_and_what_to_do() => Assert.All(
        Texts.Where(t => t.Table == "cautions"),
        t =>
        {
            Assert.True(Sentence().Count(t.Text) >= 3, t.Row);
            Assert.Matches("meets?|reach|eats|people|concerns|[Ww]hoever|fly inside", t.Text);
        });

    // The powder is breathed by whoever weighs it, long before the kiln is lit. Source: practice of the trade.
    [Theory]
    [InlineData("manganese-fume", "nerves")]
    [InlineData("copper-fume", "powder")]
    [InlineData("nickel-dust", "cancer")]
    [InlineData("cobalt-dust", "lungs")]
    public void Powders_ask_for_a_respirator_and_a_wet_cloth(string caution, string word)
    {
        var text = Text("cautions", caution);
        Assert.Contains(word, text, StringComparison.Ordinal);
        Assert.Contains("respirator", text, StringComparison.Ordinal);
        Assert.Matches("wipe up wet|wet cloth", text);
        var row = Embedded.Cautions.Single(c => c.Id == caution);
        Assert.Contains(WorkStage.Mixing, row.Stages);
        Assert.Contains(Exposed.GlazeMixer, row.Who);
        Assert.Contains("respirator", row.Control, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("wet wiping", row.Control, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Nickel_is_named_as_a_carcinogen_with_what_is_known_of_it()
    {
        var row = Embedded.Cautions.Single(c => c.Id == "nickel-dust");
        Assert.Contains("carcinogen", row.Hazard, StringComparison.Ordinal);
        Assert.Equal(["osha-z1"], row.Sources);
        Assert.Equal(Confidence.CommonPractice, row.Confidence);
        Assert.Contains("one printed list", Text("cautions", "nickel-dust"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cautions", "raku-bin-flames")]
    [InlineData("processes", "raku-western")]
    public void Raku_is_done_outdoors_in_clothing_with_shield_and_water(string table, string row)
    {
        var text = Text(table, row);
        foreach (var word in new[] { "outdoors", "gloves", "face shield", "water" }) Assert.Contains(word, text, StringComparison.Ordinal);
        Assert.Matches("wool|natural fibres", text);
    }

    // Source of the start: the caution explosive-reduction; of the floor: NFPA 86 for gas that must burn by itself, recalled.
    [Fact]
    public void Reduction_starts_at_one_heat_wherever_it_is_told()
    {
        string[] told =
        [
            Text("cautions", "explosive-reduction"), Embedded.Cautions.Single(c => c.Id == "explosive-reduction").Control,
            Text("processes", "gas-reduction"), Embedded.Processes.Single(p => p.Id == "gas-reduction").AtmosphereNote,
            Embedded.ScheduleTemplates.Single(t => t.Id == "gas-reduction").Note!,
        ];
        Assert.All(told, t => Assert.Contains("860 to 900 °C", t, StringComparison.Ordinal));
        Assert.All(told, t => Assert.DoesNotContain("750", t, StringComparison.Ordinal));
        Assert.All(told, t => Assert.DoesNotContain("870", t, StringComparison.Ordinal));
    }

    // At 60 °C/h the self-supporting chart prints 1247 °C for cone 8; the row says about 1250 °C.
    [Fact]
    public void Salt_starts_at_one_cone_and_its_temperature()
    {
        var salt = Embedded.ProcessAdditions.Single(a => a.Process == "salt" && a.Material.StartsWith("salt", StringComparison.Ordinal));
        Assert.Equal(("8", 1250m), (salt.ConeLow, salt.CelsiusLow));
        Assert.All(
            new[] { salt.When, Text("processes", "salt") },
            t => Assert.True(t.Contains("cone 8", StringComparison.Ordinal) && t.Contains("1250 °C", StringComparison.Ordinal)));
        var cone8 = Embedded.EndPoints.Single(e => e is { Chart: "witness-self-supporting", Cone: "8", RateCelsiusPerHour: 60m });
        Assert.InRange(salt.CelsiusLow!.Value - cone8.Celsius, -5m, 5m);
    }

    private static string Text(string table, string row) => Texts.Single(t => t.Table == table && t.Row == row).Text;

    private static double Index(string text)
    {
        var words = text.Split(' ').Where(w => w.Any(char.IsLetterOrDigit)).ToList();
        var letters = words.Sum(w => w.Count(char.IsLetterOrDigit));
        return (4.71 * letters / words.Count) + (0.5 * words.Count / Math.Max(1, Sentence().Count(text))) - 21.43;
    }

    [GeneratedRegex(@"[.!?](?=\s|$)")]
    private static partial Regex Sentence();
}
