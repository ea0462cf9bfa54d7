using ConeService.Client.Asking;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;

namespace ConeService.Client;

/// <summary>The scale, one cone, where it goes down, and which one a temperature reaches. Every method raises
/// <see cref="RefusedException"/> for what can't be answered as asked, and <see cref="ConeServiceAwayException"/> when nobody
/// answers.</summary>
public interface IConesClient
{
    /// <summary>The scale, coolest first.</summary>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ConeList>> ListAsync(CancellationToken cancel = default);

    /// <summary>One cone, with every printed end point.</summary>
    /// <param name="cone">The cone.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ConeDescription>> DescribeAsync(Cone cone, CancellationToken cancel = default);

    /// <summary>Where a cone goes down, °C and °F.</summary>
    /// <param name="cone">The cone.</param>
    /// <param name="rate">Heating rate over the last 100 °C; null: the chart's usual one, said in assumed.</param>
    /// <param name="chart">Id of a chart; null: the current chart of self-supporting cones, said in assumed.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<EndPoint>> EndPointAsync(Cone cone, HeatingRate? rate = null, string? chart = null, CancellationToken cancel = default);

    /// <summary>The cone that a steady ramp to a temperature puts down.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <param name="rate">Heating rate over the last 100 °C; null: the chart's usual one, said in assumed.</param>
    /// <param name="chart">Id of a chart; null: the current chart of self-supporting cones, said in assumed.</param>
    /// <param name="cancel">Ends the wait.</param>
    Task<Answered<ConeReading>> ReachedAsync(
        Temperature temperature, HeatingRate? rate = null, string? chart = null, CancellationToken cancel = default);
}

internal sealed class ConesClient(IAnswerer answerer) : IConesClient
{
    public Task<Answered<ConeList>> ListAsync(CancellationToken cancel) =>
        answerer.AskAsync(new Question<ConeList>("/v1/cones", static (r, _) => r.Cones.List()), cancel);

    public Task<Answered<ConeDescription>> DescribeAsync(Cone cone, CancellationToken cancel) => answerer.AskAsync(
        new Question<ConeDescription>($"/v1/cones/{cone}", (r, _) => r.Cones.Describe(r.Cones.Read(cone.ToString()))), cancel);

    public Task<Answered<EndPoint>> EndPointAsync(Cone cone, HeatingRate? rate, string? chart, CancellationToken cancel) =>
        answerer.AskAsync(
            new Question<EndPoint>(
                Addresses.Of($"/v1/cones/{cone}/end-point", ("rate", rate?.ToString()), ("chart", chart)),
                (r, _) => r.Cones.EndPoint(cone.ToString(), rate?.ToString(), chart)),
            cancel);

    public Task<Answered<ConeReading>> ReachedAsync(
        Temperature temperature, HeatingRate? rate, string? chart, CancellationToken cancel)
    {
        var text = Addresses.Text(temperature);
        return answerer.AskAsync(
            new Question<ConeReading>(
                Addresses.Of($"/v1/temperatures/{Addresses.Part(text)}/cone", ("rate", rate?.ToString()), ("chart", chart)),
                (r, _) => r.Cones.Reading(text, rate?.ToString(), chart)),
            cancel);
    }
}
