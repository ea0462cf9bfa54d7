using ConeService.Api.Features.Cards;
using ConeService.Api.Features.Cautions;
using ConeService.Api.Features.Charts;
using ConeService.Api.Features.Colours;
using ConeService.Api.Features.ConeFacts;
using ConeService.Api.Features.Cones;
using ConeService.Api.Features.Conversions;
using ConeService.Api.Features.Datasets;
using ConeService.Api.Features.Embedding;
using ConeService.Api.Features.Equations;
using ConeService.Api.Features.Faults;
using ConeService.Api.Features.Figures;
using ConeService.Api.Features.Glossary;
using ConeService.Api.Features.Guide;
using ConeService.Api.Features.Health;
using ConeService.Api.Features.HeatWork;
using ConeService.Api.Features.Home;
using ConeService.Api.Features.Index;
using ConeService.Api.Features.Kilns;
using ConeService.Api.Features.Landmarks;
using ConeService.Api.Features.Limits;
using ConeService.Api.Features.Loads;
using ConeService.Api.Features.Materials;
using ConeService.Api.Features.OEmbed;
using ConeService.Api.Features.Plans;
using ConeService.Api.Features.Posters;
using ConeService.Api.Features.Problems;
using ConeService.Api.Features.Processes;
using ConeService.Api.Features.Questions;
using ConeService.Api.Features.Reference;
using ConeService.Api.Features.Schedules;
using ConeService.Api.Features.Search;
using ConeService.Api.Features.Sources;
using ConeService.Api.Features.Tables;
using ConeService.Api.Features.Temperatures;
using ConeService.Api.OpenApi;
using ConeService.Api.Operation.Signals;
using ConeService.Api.Operation.Work;

namespace ConeService.Api.Http;

/// <summary>Every route of the service, one line a feature.</summary>
internal static class Routes
{
    private static readonly string[] GetAndHead = ["GET", "HEAD"];
    private static readonly string[] Post = ["POST"];

    public static void MapConeService(this WebApplication app)
    {
        var v1 = Computations.BoundPosts(DataRoute.Mark(app.MapGroup("/v1")));
        v1.MapCharts();
        v1.MapCones();
        v1.MapConeFacts();
        v1.MapTemperatures();
        v1.MapConversions();
        v1.MapHeatWork();
        v1.MapForecast();
        v1.MapSchedules();
        v1.MapKilns();
        v1.MapPlans();
        v1.MapMaterials();
        v1.MapLoads();
        v1.MapColorants();
        v1.MapColours();
        v1.MapProcesses();
        v1.MapCautions();
        v1.MapLimits();
        v1.MapFaults();
        v1.MapLandmarks();
        v1.MapGlossary();
        v1.MapSearch();
        v1.MapQuestions();
        v1.MapDataset();
        v1.MapSources();
        v1.MapEquations();
        v1.MapTables();

        app.MapIndex();
        DataRoute.Mark(app.MapGroup("")).MapCards();
        DataRoute.Mark(app.MapGroup("")).MapGuide();
        DataRoute.Mark(app.MapGroup("")).MapFigures();
        DataRoute.Mark(app.MapGroup("")).MapPosters();
        app.MapEmbedding();
        app.MapOEmbed();
        app.MapDatasetFiles();
        app.MapProblemPages();
        app.MapHealth();
        app.MapHome();
        app.MapReference();
        app.MapDocument();
        Telemetry.Map(app);
    }

    /// <summary>Maps a read-only address for GET and HEAD.</summary>
    public static RouteHandlerBuilder MapRead(this IEndpointRouteBuilder routes, string pattern, Delegate handler) =>
        LateHandler.Map(routes, pattern, GetAndHead, handler);

    /// <summary>Maps an address to which questions are posted.</summary>
    public static RouteHandlerBuilder MapPosted(this IEndpointRouteBuilder routes, string pattern, Delegate handler) =>
        LateHandler.Map(routes, pattern, Post, handler);
}
