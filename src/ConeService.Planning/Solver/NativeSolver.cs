using System.Runtime.CompilerServices;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>Whether the native library of the solver can be loaded on this machine; nothing of it is touched before this is
/// asked.</summary>
internal static class NativeSolver
{
    private static readonly Lazy<bool> Loaded = new(Load);

    /// <summary>True where it is there.</summary>
    public static bool IsThere => Loaded.Value;

    private static bool Load()
    {
        try
        {
            Touch();
            return true;
        }
        catch (Exception missing) when (missing is DllNotFoundException or TypeInitializationException or FileNotFoundException
            or BadImageFormatException or EntryPointNotFoundException)
        {
            return false;
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void Touch()
    {
        var model = new CpModel();
        model.Maximize(model.NewBoolVar(""));
        using var solver = new SolverRun(model, new SolverTime(1, 1), 1);
        _ = solver.Solve();
    }
}
