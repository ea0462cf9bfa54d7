using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Reading;

/// <summary>
/// What a name of the caller's may be: it comes back on sheets, in tables and in logs of others, where a line break or a mark that turns
/// the direction of writing would forge what stands beside it.
/// </summary>
internal static class Naming
{
    /// <summary>Most characters of a name.</summary>
    public const int MostCharacters = Told.MostCharacters;

    private static readonly IReadOnlyList<Message> Example = Message.Verbatim(["mug-7"]);

    /// <summary>What is wrong with a name; null for nothing.</summary>
    /// <param name="field">Pointer to it.</param>
    /// <param name="member">How the member is called.</param>
    /// <param name="name">The name.</param>
    public static Finding? Check(string field, string member, string name)
    {
        if (name.Length > MostCharacters)
        {
            return new(
                FindingCodes.TextTooLong, field, name,
                Message.Of("members.text-too-long", ("member", member), ("characters", name.Length), ("most", MostCharacters)),
                Example);
        }

        for (var i = 0; i < name.Length; i++)
        {
            if (!IsUnprintable(name[i])) continue;
            var code = ((int)name[i]).ToString("X4", CultureInfo.InvariantCulture);
            return new(
                FindingCodes.TextUnprintable, field, name,
                Message.Of("members.text-unprintable", ("member", member), ("code", code), ("place", i + 1)),
                Example);
        }

        return null;
    }

    // Marks that scripts and emoji need (U+200C, U+200D) are none of them.
    private static bool IsUnprintable(char c) => char.IsControl(c) || c is '\u2028' or '\u2029'
        or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');
}
