using System.Collections;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>Old ids are read and looked up as if they were the new ones.</summary>
public sealed class RenamedIdTests
{
    private static readonly Dataset Embedded = DatasetLoader.LoadEmbedded();

    private readonly Scenario _scenario = new();

    [Theory]
    // Rows of version 1.4.0 of the package and what they say.
    [InlineData("cautions", "caut02", "carbon-monoxide")]
    [InlineData("load-rules", "load56", "suspect-the-zero-first")]
    [InlineData("exposure-limits", "lim29", "lead-osha-pel")]
    [InlineData("food-contact-limits", "fc04", "lead-flatware-fda")]
    [InlineData("colour-notes", "cop024", "copper-lead-oxidation-leaf-green")]
    [InlineData("cautions", "carbon-monoxide", "carbon-monoxide")]
    [InlineData("load-rules", "caut02", "caut02")]
    public void An_old_id_leads_to_the_id_of_today(string table, string id, string current) =>
        Assert.Equal(current, Embedded.CurrentId(table, id));

    [Fact]
    public void A_package_with_old_ids_gives_the_rows_of_today()
    {
        var earlier = DatasetLoader.Load(EarlierPackage.Create());

        // An older package has no messages; the embedded ones are said. Nor has it texts for students, and they are told nothing.
        var tables = typeof(Dataset).GetProperties()
            .Where(p => p.PropertyType.IsGenericType)
            // As they stand, tables have the columns of their own version.
            .Where(p => p.Name is not (nameof(Dataset.Resources) or nameof(Dataset.Messages) or nameof(Dataset.Texts)
                or nameof(Dataset.Citations) or nameof(Dataset.Tables)));
        foreach (var table in tables)
            Assert.Equal(Rows(table.GetValue(Embedded)), Rows(table.GetValue(earlier)));
        // Citations stand in the order of the rows, which was that of the old ids.
        Assert.All(Embedded.Citations, c => Assert.Equal(Rows(c.Value), Rows(earlier.Citations[c.Key])));
    }

    [Fact]
    public void The_earlier_package_has_old_ids_indeed()
    {
        var package = EarlierPackage.Create();

        Assert.Contains("\ncaut02,", package.Text("cautions.csv"), StringComparison.Ordinal);
        Assert.Contains("load-rules/load16;load-rules/load18", package.Text("disagreements.csv"), StringComparison.Ordinal);
        Assert.Contains("chr074;chr078", package.Text("colour-rules.csv"), StringComparison.Ordinal);
        Assert.DoesNotContain("renamed-ids.csv", package.List());
    }

    [Fact]
    public void An_overlay_with_old_ids_loads_over_the_package_of_today()
    {
        var overlay = new InMemoryPackage("glaze-room");
        var descriptor = JsonNode.Parse(Repository.Data("datapackage.json"))!;
        var glazes = InMemoryPackage.Unsealed(InMemoryPackage.Table(descriptor, "glazes")).DeepClone();
        descriptor["name"] = "glaze-room";
        descriptor["version"] = "1.0.0";
        descriptor["resources"] = new JsonArray(glazes);
        InMemoryPackage.Unseal(descriptor);
        overlay.Put("datapackage.json", descriptor.ToJsonString());
        overlay.Put("glazes.csv", Repository.Data("glazes.csv").Split('\n')[0] + "\n"
            + "room-blue,room blue,glaze,5,5,6,6,7,7,oxidation,,refuse,,,glaze,bisqued,,Dry.,Runs.,low,,,,no,leach-test,,,,"
            + "caut08;copper-fume;caut11,common-practice,common-practice,common-practice,\n");

        var dataset = DatasetLoader.Load(new EmbeddedPackageFiles(), [overlay]);

        Assert.Equal(["copper-fume", "cobalt-dust"], dataset.Glazes.Single(g => g.Id == "room-blue").Cautions);
    }

    [Fact]
    public void References_to_a_row_are_renamed_with_it()
    {
        foreach (var file in new[] { "cautions.csv", "kiln-heats.csv", "firing-kinds.csv" })
            _scenario.Base.Put(file, _scenario.Base.Text(file).Replace("carbon-monoxide", "caut02", StringComparison.Ordinal));

        Assert.All(_scenario.Load().KilnHeats, h => Assert.Equal(["carbon-monoxide"], h.Cautions));
    }

    [Fact]
    public void A_correction_of_an_old_id_corrects_the_row_and_names_it_as_today()
    {
        _scenario.Base.Replace("disagreements.csv", "cone-of-test-clay,", "dis08,");
        _scenario.Base.Append("corrections.csv", "load-rules,load01,rule,Rule.,Other rule.,Misprint,Arithmetic,seen-chart,published");
        _scenario.Base.Put("load-rules.csv", string.Concat(Reordered()));

        var dataset = _scenario.Load();

        Assert.Equal("Other rule.", dataset.LoadRules.Single(r => r.Id == "bisque-suits-lowest-body").Rule);
        Assert.Equal("bisque-suits-lowest-body", dataset.Corrections[1].Key);
        Assert.Equal("salt-melting-and-vapour", Assert.Single(dataset.Disagreements).Id);

        // load01 sorts elsewhere than the words that replaced it.
        IEnumerable<string> Reordered()
        {
            var text = _scenario.Base.Text("load-rules.csv").Replace("bisque-suits-lowest-body,", "load01,", StringComparison.Ordinal);
            var lines = text.TrimEnd('\n').Split('\n');
            return [lines[0] + "\n", .. lines[1..].Order(StringComparer.Ordinal).Select(l => l + "\n")];
        }
    }

    [Fact]
    public void A_package_may_rename_rows_of_its_own()
    {
        _scenario.Base.Replace("disagreements.csv", "clay-bodies/test-clay", "clay-bodies/trial-clay");
        _scenario.Base.Append("renamed-ids.csv", "clay-bodies,trial-clay,test-clay,1.0.0");

        var dataset = _scenario.Load();

        Assert.Equal("test-clay", dataset.CurrentId("clay-bodies", "trial-clay"));
        Assert.Equal(["clay-bodies/test-clay"], Assert.Single(dataset.Disagreements).Concerns);
        // What the code knows by new ids holds for every package.
        Assert.Equal("carbon-monoxide", dataset.CurrentId("cautions", "caut02"));
    }

    [Fact]
    public void The_embedded_renaming_wins_over_one_of_the_package()
    {
        _scenario.Base.Append("renamed-ids.csv", "cautions,caut02,copper-fume,1.0.0");

        Assert.Equal("carbon-monoxide", _scenario.Load().CurrentId("cautions", "caut02"));
    }

    private static List<string> Rows(object? table) =>
        [.. ((IEnumerable)table!).Cast<object>().Select(Row).Order(StringComparer.Ordinal)];

    // What later columns say the earlier package can't.
    private static string Row(object row)
    {
        var json = JsonSerializer.SerializeToNode(row, row.GetType())!.AsObject();
        foreach (var later in (string[])[nameof(ChartRow.ReductionSensitive), nameof(ChartRow.BendsLater), nameof(BendingEnergyRow.Oddity)])
            json.Remove(later);
        return json.ToJsonString();
    }
}
