using ConeService.Contract.Texts;

namespace ConeService.Firing.Colours;

/// <summary>Several things said in a row.</summary>
internal static class Phrases
{
    /// <summary>This and that; at least one.</summary>
    public static Message And(IEnumerable<Message> items) =>
        items.Aggregate((left, right) => Message.Of("colours.and", ("left", left), ("right", right)));

    /// <summary>Words of the data, this and that; at least one.</summary>
    public static Message And(IEnumerable<string> items) => And(Message.Verbatim(items));

    /// <summary>This; that: each stands for itself. At least one.</summary>
    public static Message Beside(IEnumerable<Message> items) =>
        items.Aggregate((left, right) => Message.Of("colours.beside", ("left", left), ("right", right)));

    /// <summary>An ingredient with its percentage, where one was stated.</summary>
    public static Message Amount(string ingredient, decimal? percent) => percent is { } stated
        ? Message.Of("colours.amount", ("ingredient", ingredient), ("percent", stated)) : Message.Verbatim(ingredient);
}
