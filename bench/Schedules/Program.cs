using System.Diagnostics;
using System.Globalization;
using ConeService.Bench.Schedules;
using ConeService.Contract.Answers;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;
using ConeService.Firing.Loads;
using ConeService.Firing.Schedules;
using ConeService.Firing.Schedules.Fitting;
using Kiln = ConeService.Contract.Kilns.Kiln;

// A schedule of twenty segments fitted to cone and kiln, prediction and answer included, against the kiln model alone
// on the same plan, in one run. Exits with 1 when the fit costs more than fifteen predictions: it makes two, and solves the peak of a
// dozen trial programmes.
const double mostRatio = 15;
const int rounds = 101;

var dataset = DatasetLoader.LoadEmbedded();
var model = new KilnModel(dataset);
var fitter = new ScheduleFitter(new ScheduleCatalogue(dataset), new ConeCharts(dataset), model, new LoadCheck(new ConeCharts(dataset)));
var schedule = LongSchedule.Make();
var kiln = new Kiln("bench", "electric", VolumeLitres: 180, Kilowatts: 14);
var request = new FitRequest(
    SentText.Of("6"),
    Units: "C",
    Kiln: kiln,
    Load: new(KilogramsWare: 40, KilogramsFurniture: 25, ThickestMillimetres: 8),
    Start: "2026-12-04T18:00:00+01:00");

var result = fitter.Fit(schedule, request);
var setup = model.Resolve(new(KilnHeat.Electric, VolumeLitres: 180, Kilowatts: 14), new(40, 25, 8, WareStage.Green));
var segments = result.Answer.Programme.Segments
    .Select(s => new HeatSegment((double)s.Rate, (double)s.Target + 273.15, s.HoldMinutes / 60));
var plan = KilnProgramme.Of(new HeatProgramme(293.15, [.. segments], 150));
var (answer, opening) = (result.Answer, result.Answer.Times.OpeningMinutes / 60);
Console.WriteLine(string.Create(
    CultureInfo.InvariantCulture,
    $"{answer.Segments.Count} segments, {opening:0.0} h to the opening: the cones read {answer.HeatWork.Reading}"));

var (fitting, predicting) = (new double[rounds], new double[rounds]);
for (var round = -20; round < rounds; round++)
{
    var watch = Stopwatch.StartNew();
    fitter.Fit(schedule, request);
    var fit = watch.Elapsed.TotalMilliseconds;
    watch.Restart();
    model.Predict(setup, plan);
    if (round >= 0) (fitting[round], predicting[round]) = (fit, watch.Elapsed.TotalMilliseconds);
}

Array.Sort(fitting);
Array.Sort(predicting);
var ratio = fitting[rounds / 2] / predicting[rounds / 2];
Console.WriteLine(string.Create(
    CultureInfo.InvariantCulture,
    $"fit with prediction {fitting[rounds / 2]:0.00} ms, one prediction alone {predicting[rounds / 2]:0.00} ms (medians of {rounds}): "
    + $"ratio {ratio:0.00}, at most {mostRatio} is asked for; wanted: below 20 ms"));
return ratio <= mostRatio ? 0 : 1;
