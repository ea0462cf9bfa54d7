using System.Globalization;
using System.Text;
using ConeService.Contract.Study;

namespace ConeService.Api.Features.Questions;

/// <summary>Questions as GIFT text, which course systems import.</summary>
internal static class GiftText
{
    // Marks of the format, which a backslash makes plain.
    private const string Marks = "\\~=#{}:";

    public static string Write(QuestionList questions)
    {
        var text = new StringBuilder()
            .Append(CultureInfo.InvariantCulture, $"// Data package {questions.DatasetVersion}, seed {questions.Seed}\n\n");
        foreach (var q in questions.Items)
        {
            text.Append(CultureInfo.InvariantCulture, $"::{Plain(q.Id)}::{Plain(q.Name)} {{\n");
            foreach (var choice in q.Choices)
                text.Append(CultureInfo.InvariantCulture, $"{(choice.Letter == q.Right ? '=' : '~')}{Plain(choice.Text)}\n");
            text.Append(CultureInfo.InvariantCulture, $"####{Plain($"{q.Why} Source: {string.Join(", ", q.Sources)}.")}\n}}\n\n");
        }

        return text.ToString();
    }

    private static string Plain(string text) => string.Concat(text.Select(c => Marks.Contains(c) ? "\\" + c : c.ToString()));
}
