using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>Sizes and hashes of a package, and who must have them.</summary>
public sealed class SealTests
{
    private const string Descriptor = "datapackage.json";
    private static readonly IPackageFiles Reference = PackageFiles.At(Repository.DataDirectory);

    // Edited and not sealed anew: check-data data --seal, as DEVELOPERS.md says.
    [Fact]
    public void The_committed_seal_is_the_one_that_the_command_writes() =>
        Assert.Equal(Repository.Data(Descriptor), Encoding.UTF8.GetString(SealWriter.Write(Reference).Read(Descriptor)));

    [Fact]
    public void Everybody_can_recompute_it()
    {
        var json = JsonNode.Parse(Repository.Data(Descriptor))!;
        var tables = json["resources"]!.AsArray();
        var files = tables.Concat(json["seal"]!["files"]!.AsArray()).ToDictionary(f => (string)f!["path"]!);

        Assert.Equal(
            Directory.GetFiles(Repository.DataDirectory).Select(f => Path.GetFileName(f)).Where(f => f != Descriptor).Order(),
            files.Keys.Order());
        Assert.All(files, f =>
        {
            var bytes = File.ReadAllBytes(Path.Combine(Repository.DataDirectory, f.Key));
            Assert.Equal((bytes.Length, Sha256(bytes)), ((int)f.Value!["bytes"]!, (string?)f.Value["hash"]));
        });
        var own = (string)json["seal"]!["hash"]!;
        var blank = Repository.Data(Descriptor).Replace(own, "sha256:" + new string('0', 64), StringComparison.Ordinal);
        Assert.Equal(own, Sha256(Encoding.UTF8.GetBytes(blank)));
    }

    [Fact]
    public void Sealing_changes_nothing_but_the_seal()
    {
        var package = MinimalPackage.Create();
        var before = JsonNode.Parse(package.Text(Descriptor))!;
        package.Seal();
        var after = JsonNode.Parse(package.Text(Descriptor))!;
        InMemoryPackage.Unseal(after);

        Assert.True(JsonNode.DeepEquals(before, after));
        Assert.Equal("1.0.0", DatasetLoader.Load(package).VersionId);
    }

    [Fact]
    public void A_sealed_package_can_be_sealed_anew_after_an_edit()
    {
        var package = MinimalPackage.Create();
        package.Seal();
        package.Replace("charts.csv", "Test chart", "New chart");
        Assert.Equal(FaultRules.Seal, Fault(package).Rule);

        package.Seal();

        Assert.Equal("New chart", DatasetLoader.Load(package).Charts[0].Title);
    }

    [Fact]
    public void A_package_of_today_without_seal_is_refused_by_one_fault_that_names_the_command()
    {
        var package = Copy();
        package.EditDescriptor(InMemoryPackage.Unseal);

        var fault = Fault(package);

        Assert.Equal((FaultRules.Seal, Descriptor, "seal"), (fault.Rule, fault.File, fault.Field));
        Assert.Contains("end-points.csv", fault.Reason, StringComparison.Ordinal);
        Assert.Contains("check-data DIRECTORY --seal", fault.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bytes")]
    [InlineData("hash")]
    public void A_package_of_today_with_part_of_a_seal_is_refused(string member)
    {
        var package = Copy();
        package.EditTable("cones", t => t.AsObject().Remove(member));
        // The rest fits.
        package.EditDescriptor(j => j["seal"]!["hash"] = Own(j));

        Assert.Contains("of cones.csv;", Fault(package).Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1.3.0")]
    [InlineData("1.6.0")]
    public void An_older_package_loads_without_seal(string version) =>
        Assert.Equal(version, DatasetLoader.Load(new ZipPackageFiles(ReleasedPackages.Path(version))).VersionId);

    [Fact]
    public void An_overlay_loads_without_seal_and_with_one_that_fits()
    {
        var overlay = MinimalOverlay.Create();
        Assert.Equal(2, DatasetLoader.Load(MinimalPackage.Create(), [overlay]).Charts.Count);
        overlay.Seal();
        Assert.Equal(2, DatasetLoader.Load(MinimalPackage.Create(), [overlay]).Charts.Count);
        overlay.Replace("end-points.csv", "1030,1886", "1031,1888");

        var fault = Assert.Single(
            Assert.Throws<InvalidPackageException>(() => DatasetLoader.Load(MinimalPackage.Create(), [overlay])).Faults);

        Assert.Equal(("north-shed", "end-points.csv", FaultRules.Seal), (fault.Package, fault.File, fault.Rule));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("[]")]
    [InlineData("{")]
    public void What_has_no_descriptor_cannot_be_sealed(string? descriptor)
    {
        var package = MinimalPackage.Create();
        if (descriptor is null)
            package.Remove(Descriptor);
        else
            package.Put(Descriptor, descriptor);

        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(package.Seal).Faults);

        Assert.Equal(Descriptor, fault.File);
    }

    private static InMemoryPackage Copy()
    {
        var package = new InMemoryPackage("copy");
        foreach (var name in Reference.List())
            package.PutBytes(name, Reference.Read(name));
        return package;
    }

    private static PackageFault Fault(InMemoryPackage package) =>
        Assert.Single(Assert.Throws<InvalidPackageException>(() => DatasetLoader.Load(package)).Faults);

    private static string Own(JsonNode descriptor)
    {
        descriptor["seal"]!["hash"] = "sha256:" + new string('0', 64);
        return Sha256(Encoding.UTF8.GetBytes(descriptor.ToJsonString()));
    }

    private static string Sha256(byte[] bytes) => "sha256:" + Convert.ToHexStringLower(SHA256.HashData(bytes));
}
