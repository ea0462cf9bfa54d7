// The booking page of an invented studio: a pot is judged before its place in the kiln is kept.
using System.Collections.Concurrent;
using System.Net;
using ConeService.Client;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;

var builder = WebApplication.CreateBuilder(args);
builder.Services.AddConeClient(o => o.Service = new Uri(builder.Configuration["ConeService"] ?? "http://localhost:5000"));
var app = builder.Build();
var booked = new ConcurrentQueue<string>();

app.MapGet("/", () => Page("""
    <form method="post" action="/bookings">
    <label>Clay body <input name="body" value="mid-range-stoneware-light"></label>
    <label>Glaze <input name="glaze" value="mid-range-gloss"></label>
    <label>Cone <input name="cone" value="6"></label>
    <button>Book</button>
    </form>
    """));

app.MapPost("/bookings", async (HttpRequest request, ILoadsClient loads, CancellationToken cancel) =>
{
    var form = await request.ReadFormAsync(cancel);
    var load = new LoadRequest(
        new(Heat: "electric", MaxCone: "8", Atmospheres: ["oxidation"]),
        new("glaze", form["cone"].ToString(), "oxidation"),
        [new("pot", Body: form["body"].ToString(), State: "bisqued", Coats: [new(form["glaze"].ToString())])]);
    try
    {
        var answer = await loads.CheckAsync(load, cancel: cancel);
        if (answer.Value.Verdict == Verdict.Accept) booked.Enqueue(form["body"].ToString());
        var reasons = answer.Value.Load.Reasons.Concat(answer.Value.Pieces[0].Reasons).Select(r => r.Texts.Student.ToString());
        return Page($"""
            <p>{(answer.Value.Verdict == Verdict.Accept ? "Booked" : "Not booked")}: {answer.Value.Verdict}. {booked.Count} in the kiln.</p>
            <ul>{string.Concat(reasons.Select(r => $"<li>{WebUtility.HtmlEncode(r)}</li>"))}</ul>
            <p>Answered by: {answer.Origin}</p>
            """);
    }
    catch (RefusedException refused)
    {
        return Page($"<p>{WebUtility.HtmlEncode(refused.Message)}</p>");
    }
    catch (ConeServiceAwayException)
    {
        // Nobody judged it: it is kept for whoever fires to look at.
        return Page("<p>Nobody could judge this pot just now. Put it on the shelf for review.</p>");
    }
});

app.Run();

static IResult Page(string body) =>
    Results.Content($"<!doctype html><html lang=\"en\"><title>Kiln bookings</title>{body}</html>", "text/html; charset=utf-8");
