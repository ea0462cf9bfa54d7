using ConeService.Contract.Kilns;
using ConeService.Data;
using ConeService.Firing.Kilns;
using ConeService.Firing.Tests.Kilns;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Open vents cost heat while they are open, and when the kiln may be opened is known to half hours at best.</summary>
public class VentLossTests
{
    // By hand: the leak takes 0.0005 kg/(s m²)·1100 J/(kg K) = 0.55 W/(m² K); held at 600 °C from 20 °C over 5 h, and closed after that.
    // Open vents are three times that, a propped lid five (kiln-defaults).
    [Theory]
    [InlineData(VentSetting.Open, 3)]
    [InlineData(VentSetting.Propped, 5)]
    [InlineData(VentSetting.DamperIn, 1)]
    public void Open_vents_raise_the_leak_in_their_period_alone(VentSetting vent, double factor)
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 74, Wall: new("insulating-firebrick", 76), Kilowatts: 8), new(15, 11));
        double Leak(VentSetting vent) =>
            KilnCases.Model.Predict(setup, new([
                new(null, 600, 5, [new(600, vent)]), new(null, 700, 0, [new(700, VentSetting.AsNormal)]),
            ])).Energy.LeakKilowattHours;
        var hold = 0.55 * setup.InsideSquareMetres * 580 * 5 / 1000;
        var more = Leak(vent) - Leak(VentSetting.AsNormal);
        // The way up to the hold takes about an hour at less.
        Assert.InRange(more, (factor - 1) * hold, ((factor - 1) * hold * 1.25) + 1e-9);
    }

    // A leak that the keeper states may hold the fan already; it is not counted twice.
    [Fact]
    public void A_stated_leak_greater_than_the_vent_is_not_multiplied()
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 74, Kilowatts: 8, LeakFactor: 4), new(15, 11));
        double Energy(VentSetting vent) =>
            KilnCases.Model.Predict(setup, new([new(150, 900, 0, [new(900, vent)])])).Energy.TotalKilowattHours;
        Assert.Equal(Energy(VentSetting.AsNormal), Energy(VentSetting.Open), 9);
    }

    // bisque-mixed-ware has its vents open up to 900 °C, however few segments the controller holds.
    [Theory]
    [InlineData(null)]
    [InlineData(2)]
    [InlineData(3)]
    public void The_energy_of_a_fit_holds_the_template_vents(int? segments)
    {
        var kiln = Fits.Kilns["small"];
        if (segments is { } most) kiln = kiln with { ControllerSegments = most };
        var fit = Fits.Fit("bisque-mixed-ware", "06", kiln, new(KilogramsWare: 15, KilogramsFurniture: 11)).Answer;
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 74, Wall: new("insulating-firebrick", 76), Kilowatts: 8), new(15, 11));
        var closed = KilnCases.Model.Predict(setup, new(
            [.. fit.Programme.Segments.Select(s => new KilnSegment((double)s.Rate, (double)s.Target, s.HoldMinutes / 60))]));
        Assert.InRange(
            fit.Kiln!.Energy.LeakKilowattHours, 1.8 * closed.Energy.LeakKilowattHours, 3 * closed.Energy.LeakKilowattHours);
    }

    [Theory]
    [InlineData("small")]
    [InlineData("large")]
    [InlineData("gas")]
    public void The_opening_carries_a_span_in_half_hours(string kiln)
    {
        var times = Fits.Fit("mid-range-glaze", "6", Fits.Kilns[kiln], start: "2026-12-04T18:00:00+01:00").Answer.Times;
        Assert.Equal((0, 0), (times.OpeningSpanMin!.Value % 30, times.OpeningSpanMax!.Value % 30));
        Assert.InRange(times.OpeningMinutes!.Value, times.OpeningSpanMin.Value, times.OpeningSpanMax.Value);
        Assert.True(times.OpeningSpanMin < times.OpeningMinutes - 30 && times.OpeningSpanMax > times.OpeningMinutes + 30);
        Assert.Equal(times.Start!.Value.AddMinutes(times.OpeningSpanMin.Value), times.OpeningFrom);
        Assert.Equal(times.Start.Value.AddMinutes(times.OpeningSpanMax.Value), times.OpeningTo);
    }

    // By the docstring of the kiln: 1 is a closed kiln, and tighter ones leak less.
    [Fact]
    public void A_tight_kiln_leaks_less_than_the_usual()
    {
        double Leak(double factor) => KilnCases.Model.Predict(
            KilnCases.Model.Resolve(new(KilnHeat.Electric, 74, Kilowatts: 8, LeakFactor: factor), new(15, 11)),
            new([new(150, 900)])).Energy.LeakKilowattHours;
        Assert.InRange(Leak(0.5) / Leak(1), 0.45, 0.55);
    }

    // A wall that was measured leaves only the leak open.
    [Fact]
    public void A_stated_wall_narrows_the_span()
    {
        double Width(Kiln kiln)
        {
            var times = Fits.Fit("mid-range-glaze", "6", kiln).Answer.Times;
            return times.OpeningSpanMax!.Value - times.OpeningSpanMin!.Value;
        }

        var kiln = new Kiln("k", "electric", VolumeLitres: 150, Kilowatts: 12);
        Assert.True(Width(kiln with { Wall = new(ThicknessMillimetres: 76) }) < Width(kiln));
    }

    [Fact]
    public void Without_a_kiln_no_span_is_claimed() => Assert.Null(Fits.Fit("mid-range-glaze", "6").Answer.Times.OpeningSpanMin);

    [Theory]
    [InlineData(null)]
    [InlineData("small")]
    [InlineData("large")]
    public void Earliest_opening_and_unloading_agree(string? kiln)
    {
        var fit = Fits.Fit("mid-range-glaze", "6", kiln is null ? null : Fits.Kilns[kiln]).Answer;
        Assert.Equal(fit.Times.OpeningMinutes, fit.Landmarks.Single(l => l.Id == "unload").FromMinutes);
    }
}
