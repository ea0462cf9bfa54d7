using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;
using ConeService.Firing.Kilns.Calibration;

namespace ConeService.Firing;

/// <summary>What firings tell of their kiln.</summary>
public sealed class KilnReference
{
    private readonly KilnCalibrator calibrator;

    internal KilnReference(HeatWorkCalculator calculator, KilnModel model) => calibrator = new(calculator, model);

    /// <summary>
    /// Estimates wall, leak, power and the offset of the thermocouple from logs, and what changes from firing to firing. Takes up to some
    /// seconds for thirty firings.
    /// </summary>
    /// <param name="request">The kiln and its firings.</param>
    /// <param name="cancel">Ends the estimate.</param>
    /// <exception cref="RefusedException">Something can't be read; carries every finding.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public CalibrateAnswer Calibrate(CalibrateRequest request, CancellationToken cancel = default)
    {
        return calibrator.Answer(request, cancel);
    }
}
