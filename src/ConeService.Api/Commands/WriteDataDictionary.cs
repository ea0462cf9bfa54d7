using ConeService.Data;

namespace ConeService.Api.Commands;

/// <summary><c>data-dictionary file</c>: writes the description of the embedded package for reading.</summary>
internal static class WriteDataDictionary
{
    public static int Run(string[] args, TextWriter output)
    {
        if (args.Length != 1)
        {
            output.WriteLine("Usage: data-dictionary file");
            return 2;
        }

        File.WriteAllText(args[0], DataDictionary.Render(new EmbeddedPackageFiles()));
        output.WriteLine($"Wrote {args[0]}.");
        return 0;
    }
}
