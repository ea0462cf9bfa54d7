using Microsoft.Extensions.DependencyInjection;

namespace ConeService.Client.Tests.Support;

/// <summary>The client as a program adds it.</summary>
internal sealed class TestClient : IAsyncDisposable
{
    private readonly ServiceProvider services;

    public TestClient(Action<ConeClientOptions> configure) =>
        services = new ServiceCollection().AddConeClient(configure).BuildServiceProvider();

    public IConesClient Cones => Get<IConesClient>();

    public IConversionsClient Conversions => Get<IConversionsClient>();

    public ILoadsClient Loads => Get<ILoadsClient>();

    public ISchedulesClient Schedules => Get<ISchedulesClient>();

    public IHeatWorkClient HeatWork => Get<IHeatWorkClient>();

    public IMaterialsClient Materials => Get<IMaterialsClient>();

    public IKilnsClient Kilns => Get<IKilnsClient>();

    public IColoursClient Colours => Get<IColoursClient>();

    public IPlansClient Plans => Get<IPlansClient>();

    public IDatasetClient Dataset => Get<IDatasetClient>();

    /// <summary>Of one service, which nothing answers for.</summary>
    public static TestClient Remote(Uri service) => new(o =>
    {
        o.Service = service;
        o.AnswerLocally = false;
        o.CachedAnswers = 0;
        // The machine of the tests may be slow; that is not what they ask.
        (o.AttemptTimeout, o.TotalTimeout) = (TimeSpan.FromSeconds(30), TimeSpan.FromSeconds(60));
        (o.LongAttemptTimeout, o.LongTotalTimeout) = (TimeSpan.FromSeconds(60), TimeSpan.FromSeconds(120));
    });

    /// <summary>Of the data of this process alone.</summary>
    public static TestClient Local(params string[] overlays) => new(o =>
    {
        foreach (var overlay in overlays) o.Overlays.Add(overlay);
    });

    public ValueTask DisposeAsync() => services.DisposeAsync();

    private T Get<T>()
        where T : notnull => services.GetRequiredService<T>();
}
