using System.Globalization;

// First argument: how many bytes to answer with. The server settings below mirror those of the service.
var body = new byte[int.Parse(args[0], CultureInfo.InvariantCulture)];
Array.Fill(body, (byte)'x');

var builder = WebApplication.CreateBuilder(args[1..]);
builder.Logging.ClearProviders().AddJsonConsole().AddFilter("Microsoft.AspNetCore", LogLevel.Warning);
builder.WebHost.ConfigureKestrel(k => k.AddServerHeader = false);
var app = builder.Build();
app.MapGet("/", () => TypedResults.Bytes(body, "application/json; charset=utf-8"));
await app.RunAsync();
