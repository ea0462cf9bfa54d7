using ConeService.Api;
using ConeService.Api.Commands;

return await CommandLine.RunAsync(args) ?? await ConeServiceHost.RunAsync(args);

/// <summary>The entry point, named for the test host.</summary>
public partial class Program;
