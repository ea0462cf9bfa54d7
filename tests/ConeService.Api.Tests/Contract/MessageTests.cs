using System.Text;
using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Tests.Contract;

/// <summary>The part of the ICU MessageFormat syntax that sentences are written in, as the ICU user guide has it.</summary>
public class MessageTests
{
    [Theory]
    [InlineData("Plain.", "Plain.")]
    [InlineData("Cone {cone}.", "Cone 06.")]
    [InlineData("{ cone }", "06")]
    [InlineData("{degrees, number, 0.#} °C", "1222.3 °C")]
    [InlineData("{bytes, number, #,0}", "4,194,304")]
    [InlineData("{none, plural, =0 {no cones} one {# cone} other {# cones}}", "no cones")]
    [InlineData("{one, plural, one {# cone} other {# cones}}", "1 cone")]
    [InlineData("{many, plural, =0 {no cones} one {# cone} other {# cones}}", "12 cones")]
    [InlineData("{heat, select, gas {burners} electric {elements} other {fire}}", "elements")]
    [InlineData("{cone, select, gas {burners} other {fire}}", "fire")]
    [InlineData("{many, plural, one {x} other {{heat, select, electric {# elements} other {#}}}}", "12 elements")]
    [InlineData("{absent}.", ".")]
    [InlineData("It can't be '{'\"cone\": 6'}'.", "It can't be {\"cone\": 6}.")]
    [InlineData("{one, plural, other {'#'#}}", "#1")]
    [InlineData("A # outside.", "A # outside.")]
    public void A_template_is_put_into_words(string template, string expected) => Assert.Equal(expected, Say(template));

    [Theory]
    [InlineData("{", "no name")]
    [InlineData("{}", "no name")]
    [InlineData("{cone", "is missing")]
    [InlineData("{cone, date, x}", "none of number, plural and select")]
    [InlineData("{cone, number, 0", "not closed")]
    [InlineData("{cone, select, gas {x}}", "no branch other")]
    [InlineData("{cone, select, {x} other {y}}", "a branch has no name")]
    [InlineData("{cone, select, other x}", "is missing")]
    [InlineData("{cone, select, other {x}", "is missing")]
    [InlineData("a } b", "closes that none opened")]
    [InlineData("'{' is open '{", "not closed")]
    public void What_is_not_of_the_syntax_is_refused_with_the_place(string template, string why)
    {
        var refused = Assert.Throws<FormatException>(() => MessageTemplate.Parse(template));
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
        Assert.Contains("at character ", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_template_knows_its_parameters() => Assert.Equal(
        ["cone", "heat", "many"],
        MessageTemplate.Parse("{many, plural, one {{cone}} other {{heat, select, other {{cone}}}}}").Parameters);

    [Fact]
    public void Values_are_said_in_the_language_too_and_lists_with_commas()
    {
        var none = Message.Of("http.no-parameters");
        var allowed = Message.Of("http.allowed", ("allowed", new[] { Message.Verbatim("1C"), none }));
        Assert.Equal("Allowed: 1C, no query parameters.", allowed.ToString());
        Assert.Equal("one value no query parameters", Message.Sentences(Message.Of("http.one-value"), none).ToString());
    }

    [Fact]
    public void Equal_messages_have_equal_codes_and_values()
    {
        var message = Message.Of("http.no-such-path", ("path", "/x"));
        Assert.Equal(message, Message.Of("http.no-such-path", ("path", "/x")));
        Assert.Equal(message.GetHashCode(), Message.Of("http.no-such-path", ("path", "/x")).GetHashCode());
        Assert.NotEqual(message, Message.Of("http.no-such-path", ("path", "/y")));
        Assert.NotEqual(message, Message.Verbatim("There is nothing at /x."));
        Assert.False(message.Equals((object?)null));
        Assert.Null(message["method"]);
        Assert.Null(Message.Verbatim((string?)null));
    }

    [Fact]
    public void A_message_is_text_in_json_and_text_is_a_message()
    {
        var json = JsonSerializer.Serialize(Message.Of("http.one-value"), ConeJson.Options);
        Assert.Equal("\"one value\"", json);
        Assert.Equal(Message.Verbatim("one value"), JsonSerializer.Deserialize<Message>(json, ConeJson.Options));
    }

    [Theory]
    [InlineData("null")]
    [InlineData("\"06\"")]
    [InlineData("6.0")]
    [InlineData("{\"a\":[1]}")]
    public void What_was_sent_is_written_as_it_was_sent(string sent) =>
        Assert.Equal(sent, JsonSerializer.Serialize(JsonSerializer.Deserialize<SentText>(sent, ConeJson.Options), ConeJson.Options));

    [Fact]
    public void A_code_without_a_sentence_is_told() =>
        Assert.Throws<KeyNotFoundException>(() => MessageBook.Embedded.Say(Message.Of("http.not-there")));

    [Fact]
    public void Every_sentence_of_the_package_can_be_said() => Assert.All(EmbeddedMessages.Read(), row =>
    {
        var template = MessageTemplate.Parse(row.Text);
        var said = new StringBuilder();
        template.Write(said, name => $"‹{name}›");
        Assert.NotEmpty(said.ToString());
    });

    private static string Say(string template)
    {
        var values = new Dictionary<string, object?>
        {
            ["cone"] = "06",
            ["heat"] = "electric",
            ["degrees"] = 1222.345,
            ["bytes"] = 4_194_304L,
            ["none"] = 0,
            ["one"] = 1,
            ["many"] = 12m,
        };
        var said = new StringBuilder();
        MessageTemplate.Parse(template).Write(said, values.GetValueOrDefault);
        return said.ToString();
    }
}
