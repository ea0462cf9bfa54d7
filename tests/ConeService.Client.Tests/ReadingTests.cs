using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Client.Reading;
using ConeService.Contract.Batches;
using ConeService.Contract.Cones;
using ConeService.Contract.Json;
using ConeService.Contract.Loads;
using ConeService.Contract.Materials;
using ConeService.Contract.Schedules;

namespace ConeService.Client.Tests;

/// <summary>Answers read back lose nothing, and what only a newer service knows does no harm.</summary>
public sealed class ReadingTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Answers_read_back_and_written_again_are_the_same_json()
    {
        var client = TestClients.Local;
        Same(await client.Cones.ListAsync(Cancel));
        Same(await client.Cones.DescribeAsync(Cone.Parse("6"), Cancel));
        Same(await client.Cones.EndPointAsync(Cone.Parse("06"), null, null, Cancel));
        Same(await client.Cones.ReachedAsync(Contract.Quantities.Temperature.FromCelsius(1222), null, null, Cancel));
        Same(await client.Materials.ListBodiesAsync(null, null, Cancel));
        Same(await client.Materials.DescribeBodyAsync("mid-range-stoneware-light", Cancel));
        Same(await client.Materials.ListGlazesAsync(null, null, Cancel));
        Same(await client.Materials.DescribeGlazeAsync("mid-range-gloss", Cancel));
        Same(await client.Schedules.ListAsync(null, Cancel));
        Same(await client.Schedules.DescribeAsync("mid-range-glaze", Cancel));
        Same(await client.Dataset.DescribeAsync(Cancel));
        Same(await client.Colours.ListColorantsAsync(Cancel));
        Same(await client.Colours.DescribeColorantAsync("copper", Cancel));
        Same(await client.Colours.FindAsync(new("copper"), Cancel));
        foreach (var form in (string[])["minimal", "full"])
        {
            Same(await client.Loads.CheckAsync(Vectors.Example<LoadRequest>($"checkLoad.{form}"), null, Cancel));
            Same(await client.Loads.CheckPairingAsync(Vectors.Example<PairingRequest>($"checkPairing.{form}"), Cancel));
            Same(await client.Schedules.FitAsync("mid-range-glaze", Vectors.Example<FitRequest>($"fitSchedule.{form}"), Cancel));
            Same(await client.Conversions.ConvertAsync(Vectors.Example<Contract.Conversions.ConversionRequest>($"convert.{form}"), Cancel));
            Same(await client.HeatWork.FollowAsync(Vectors.Example<Contract.HeatWork.HeatWorkRequest>($"followFiring.{form}"), Cancel));
            Same(await client.HeatWork.SolveAsync(Vectors.Example<Contract.HeatWork.SolveRequest>($"solveFiring.{form}"), Cancel));
            Same(await client.HeatWork.CompareAsync(Vectors.Example<Contract.HeatWork.CompareRequest>($"compareFiring.{form}"), Cancel));
            Same(await client.HeatWork.ForecastAsync(Vectors.Example<Contract.HeatWork.ForecastRequest>($"forecastFiring.{form}"), Cancel));
            Same(await client.Kilns.CalibrateAsync(Vectors.Example<Contract.Kilns.CalibrateRequest>($"calibrateKiln.{form}"), Cancel));
            Same(await client.Colours.ResolveAsync(Vectors.Example<Contract.Colours.ColourRequest>($"resolveColour.{form}"), Cancel));
            Same(await client.Colours.ResolveEachAsync(Vectors.Example<ColourBatchRequest>($"resolveColours.{form}"), Cancel));
            Same(await client.Loads.CheckEachAsync(Vectors.Example<LoadBatchRequest>($"checkLoads.{form}"), null, Cancel));
            Same(await client.Loads.CheckEachPairingAsync(Vectors.Example<PairingBatchRequest>($"checkPairings.{form}"), Cancel));
            Same(await client.Schedules.FitEachAsync(Vectors.Example<FitBatchRequest>($"fitSchedules.{form}"), Cancel));
        }
    }

    [Fact]
    public async Task Cautions_of_a_detail_are_ids_in_what_it_is_the_detail_of()
    {
        var copper = (await TestClients.Local.Colours.DescribeColorantAsync("copper", Cancel)).Value;

        Assert.NotEmpty(copper.Cautions);
        Assert.Equal(copper.Cautions.Select(c => c.Id), copper.Colorant.Cautions);
    }

    [Fact]
    public async Task Words_and_members_of_a_newer_service_do_no_harm()
    {
        var answer = await TestClients.Local.Materials.ListGlazesAsync(null, null, Cancel);
        var newer = JsonNode.Parse(answer.Json.Span)!.AsObject();
        newer["fromTomorrow"] = new JsonObject { ["deep"] = 1 };
        var first = newer["items"]!.AsArray()[0]!.AsObject();
        first["coatKind"] = "slurry-of-tomorrow";
        first["tomorrow"] = "x";

        var read = AnswerReader.Read<GlazeList>(Encoding.UTF8.GetBytes(newer.ToJsonString()));

        Assert.Equal(answer.Value.Items.Count, read.Items.Count);
        Assert.False(Enum.IsDefined(read.Items[0].CoatKind));
        Assert.Equal(answer.Value.Items[1].CoatKind, read.Items[1].CoatKind);
    }

    [Fact]
    public void Every_vocabulary_of_the_contract_has_a_reader()
    {
        var known = WordReaders.All.Select(r => r.GetType().GetGenericArguments()[0]).ToHashSet();

        var lacking = new[] { typeof(Cone).Assembly, typeof(Data.Dataset).Assembly }
            .SelectMany(a => a.GetExportedTypes()).Where(t => t.IsEnum && !known.Contains(t)).ToList();

        Assert.Empty(lacking);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("""{"items":[{"datasetVersion":"1.7.0"}]}""")]
    public void What_names_no_version_of_the_data_is_no_answer(string json) =>
        Assert.Null(AnswerReader.DatasetVersion(Encoding.UTF8.GetBytes(json)));

    private static void Same<T>(Answered<T> answer) => Assert.Equal(
        Encoding.UTF8.GetString(answer.Json.Span), JsonSerializer.Serialize(answer.Value, ConeJson.Options));
}
