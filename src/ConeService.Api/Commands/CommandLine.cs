using ConeService.Api.Operation;

namespace ConeService.Api.Commands;

/// <summary>The verbs of the host besides serving; each returns an exit code.</summary>
internal static class CommandLine
{
    private static readonly (string Usage, string Says)[] Verbs =
    [
        ("check-data [path] [--overlay path]… [--seal]", "says what is wrong with a data package; seals it"),
        ("data-dictionary file", "writes the description of the embedded package"),
        ("plan-figure request out", "plans a request and draws the plan, the same each time"),
        ("probe [url]", "exit code 0 when the service answers ready"),
        ("version", "version and commit of the code"),
    ];

    /// <summary>Runs the verb named first; null when the arguments name none and the service should start.</summary>
    public static async Task<int?> RunAsync(string[] args) => args.FirstOrDefault() switch
    {
        "check-data" => CheckData.Run(args[1..], Console.Out),
        "data-dictionary" => WriteDataDictionary.Run(args[1..], Console.Out),
        "plan-figure" => await WritePlanFigure.RunAsync(args[1..], Console.Out),
        "probe" => await Probe.RunAsync(args[1..]),
        "version" or "--version" => Say($"{BuildInfo.Version} {BuildInfo.Commit}"),
        { } word when Help.IsAsked(word) => Told(),
        { } word when !word.StartsWith('-') => Unknown(word),
        _ => null,
    };

    private static int Say(string text)
    {
        Console.Out.WriteLine(text.TrimEnd());
        return 0;
    }

    private static int Told()
    {
        Help.Write(Console.Out, Verbs);
        return 0;
    }

    private static int Unknown(string word)
    {
        Help.Unknown(Console.Error, word, Verbs.Select(v => v.Usage.Split(' ')[0]));
        return 2;
    }
}
