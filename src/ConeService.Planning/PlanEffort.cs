namespace ConeService.Planning;

/// <summary>How hard a plan is searched for.</summary>
/// <param name="Seconds">Time from the question to the answer, s; 0: only steps are counted, and the same question gets the same
/// answer.</param>
/// <param name="Steps">Calendars that each worker tries at most; 0: as many as the size of the question makes worth trying.</param>
/// <param name="Workers">Searches at the same time, each with a seed of its own.</param>
/// <param name="Seed">Seed of the first.</param>
/// <param name="Solver">False: the native solver is not loaded.</param>
public sealed record PlanEffort(double Seconds = 5, long Steps = 0, int Workers = 2, int Seed = 1, bool Solver = true);
