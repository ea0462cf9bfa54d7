using ConeService.Api.Http.Problems;
using ConeService.Contract.Answers;

namespace ConeService.Api.Features.Cards;

/// <summary>What cards with questions share.</summary>
internal static class CardFrame
{
    /// <summary>Tells on the card itself what can't be answered, where the form stands in which it can be mended.</summary>
    public static void Wrong(CardBody body, RefusedException? refused)
    {
        if (refused is null) return;
        foreach (var finding in refused.Findings)
        {
            var text = string.Join(' ', ProblemWriter.SentencesOf(finding).Select(m => m.ToString()));
            body.Say($"<span role=\"alert\">{Http.HtmlPage.Encode(text)}</span>", text, "wrong", needed: true);
        }
    }

    /// <summary>The answer, or none where it is refused.</summary>
    public static IEnumerable<T> Try<T>(Func<T> answer)
        where T : class
    {
        T? found;
        try
        {
            found = answer();
        }
        catch (RefusedException)
        {
            yield break;
        }

        yield return found;
    }

    /// <summary>What was asked for; where it is refused, what is told without a question, and why.</summary>
    public static (T Told, RefusedException? Refused) Or<T>(Func<T> asked, Func<T> otherwise)
    {
        try
        {
            return (asked(), null);
        }
        catch (RefusedException refused)
        {
            return (otherwise(), refused);
        }
    }

    /// <summary>The address of a card with what was asked of it.</summary>
    public static string Path(string path, CardAsk ask, IEnumerable<string> names)
    {
        var asked = names.Where(n => ask[n] is not null).Select(n => $"{n}={Uri.EscapeDataString(ask[n]!)}").ToList();
        return asked.Count == 0 ? path : $"{path}?{string.Join('&', asked)}";
    }
}
