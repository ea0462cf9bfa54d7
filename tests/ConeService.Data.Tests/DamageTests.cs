using System.Globalization;

namespace ConeService.Data.Tests;

/// <summary>
/// Copies of the reference package with one file damaged: none is answered from. Rules alone let more than a third of them through,
/// for what is left of a damaged table often contradicts nothing.
/// </summary>
public sealed class DamageTests
{
    // The long form: CONESERVICE_DAMAGED=1000. Another seed: CONESERVICE_SEED=2.
    private static readonly int Packages = Number("CONESERVICE_DAMAGED", 150);
    private static readonly int Seed = Number("CONESERVICE_SEED", 1);

    private static readonly (string Name, Func<byte[], Random, byte[]?> Do)[] Damages =
    [
        ("cut at a line end", CutAtLineEnd), ("a line lost", LoseLine), ("a digit changed", ChangeDigit), ("a bit flipped", FlipBit),
    ];

    [Fact]
    public void No_damaged_package_answers()
    {
        var random = new Random(Seed);
        var reference = PackageFiles.At(Repository.DataDirectory);
        var names = reference.List().Order(StringComparer.Ordinal).ToArray();
        Dictionary<string, int> refused = [];
        List<string> answered = [];
        while (refused.Values.Sum() + answered.Count < Packages)
        {
            var damage = Damages[random.Next(Damages.Length)];
            var file = names[random.Next(names.Length)];
            if (damage.Do(reference.Read(file), random) is not { } bytes)
                continue;
            var package = new InMemoryPackage("damaged");
            foreach (var name in names)
                package.PutBytes(name, name == file ? bytes : reference.Read(name));
            if (Answers(package))
                answered.Add($"{file}, {damage.Name}");
            else
                refused[damage.Name] = refused.GetValueOrDefault(damage.Name) + 1;
        }

        TestContext.Current.TestOutputHelper?.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"Seed {Seed}. Refused: {string.Join(", ", refused.Select(r => $"{r.Key} {r.Value}"))}. Answered: {answered.Count}."));
        Assert.Empty(answered);
        Assert.Equal(Damages.Length, refused.Count);
    }

    private static bool Answers(IPackageFiles package)
    {
        try
        {
            DatasetLoader.Load(package);
            return true;
        }
        catch (InvalidPackageException)
        {
            return false;
        }
    }

    private static byte[]? CutAtLineEnd(byte[] bytes, Random random)
    {
        var ends = Ends(bytes);
        return ends.Count < 2 ? null : bytes[..(ends[random.Next(ends.Count - 1)] + 1)];
    }

    private static byte[]? LoseLine(byte[] bytes, Random random)
    {
        var ends = Ends(bytes);
        if (ends.Count < 2)
            return null;
        var line = random.Next(1, ends.Count);
        return [.. bytes[..(ends[line - 1] + 1)], .. bytes[(ends[line] + 1)..]];
    }

    private static byte[]? ChangeDigit(byte[] bytes, Random random)
    {
        var digits = Enumerable.Range(0, bytes.Length).Where(i => char.IsAsciiDigit((char)bytes[i])).ToList();
        if (digits.Count == 0)
            return null;
        var at = digits[random.Next(digits.Count)];
        bytes[at] = (byte)('0' + (bytes[at] - '0' + random.Next(1, 10)) % 10);
        return bytes;
    }

    private static byte[] FlipBit(byte[] bytes, Random random)
    {
        bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
        return bytes;
    }

    private static List<int> Ends(byte[] bytes) => [.. Enumerable.Range(0, bytes.Length).Where(i => bytes[i] == '\n')];

    private static int Number(string variable, int otherwise) =>
        int.TryParse(Environment.GetEnvironmentVariable(variable), CultureInfo.InvariantCulture, out var number) ? number : otherwise;
}
