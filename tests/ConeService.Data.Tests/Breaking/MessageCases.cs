using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Messages that cannot be put into words. The minimal package holds none: each case brings its own.</summary>
internal static class MessageCases
{
    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Message("a_message_whose_brace_is_not_closed", 2, "text", "loads.warm,anyone,en,It is {cone"),
        Message("a_message_whose_brace_opens_nowhere", 2, "text", "loads.warm,anyone,en,It is cone}"),
        Message("a_message_that_chooses_without_other", 2, "text", "loads.warm,anyone,en,\"{n, plural, one {a cone}}\""),
        Message("a_translation_with_a_parameter_of_its_own", 3, "text", "loads.warm,anyone,en,Cone {cone}.",
            "loads.warm,anyone,nl,Kegel {kegel}."),
        Message("a_message_for_some_with_a_parameter_of_its_own", 3, "text", "loads.warm,anyone,en,Cone {cone}.",
            "loads.warm,student,nl,Kegel {kegel}."),
        Message("a_message_without_english", 2, "code", "loads.warm,anyone,nl,Kegel {cone}."),
    ];

    private static BreakingCase Message(string name, int line, string field, params string[] rows) =>
        Of(name, FaultRules.MessageText, "messages.csv", line, field, p =>
        {
            foreach (var row in rows) p.Append("messages.csv", row);
        });
}
