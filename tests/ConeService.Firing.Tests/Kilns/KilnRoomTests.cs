using ConeService.Contract.Answers;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Tests.Kilns;

/// <summary>What has no room in the kiln is asked back, and a litre more makes no other kiln.</summary>
public class KilnRoomTests
{
    // Fired clay weighs about 2 kg a litre, and bricks set close fill five eighths: 1.25 kg a litre, 250 kg in 200 L; with shelves 300.
    [Theory]
    [InlineData(500.0, 0, "/load/kilogramsWare")]
    [InlineData(260.0, 0, "/load/kilogramsWare")]
    [InlineData(200.0, 150, "/load/kilogramsWare")]
    [InlineData(null, 400, "/load/kilogramsFurniture")]
    public void More_than_bricks_set_close_is_asked_back(double? ware, double furniture, string field)
    {
        var finding = Refusal(new(KilnHeat.Electric, 200), new(ware, furniture));
        Assert.Equal(("load-does-not-fit", field), (finding.Code, finding.Field));
        Assert.Contains("300 kg", finding.Allowed.Single().ToString(), StringComparison.Ordinal);
        Assert.NotNull(finding.LikelyMistake);
        Assert.NotNull(finding.Value);
    }

    [Fact]
    public void A_dense_load_goes_in() =>
        Assert.Equal(180, KilnCases.Model.Resolve(new(KilnHeat.Electric, 200), new(180, 80)).KilogramsWare);

    // 27 L are a cube of 300 mm.
    [Theory]
    [InlineData(301, true)]
    [InlineData(300, false)]
    public void Ware_thicker_than_the_chamber_is_asked_back(double thickness, bool refused)
    {
        var kiln = new StatedKiln(KilnHeat.Electric, 27);
        if (!refused)
        {
            Assert.NotNull(KilnCases.Model.Resolve(kiln, new(ThickestMillimetres: thickness)));
            return;
        }

        var finding = Refusal(kiln, new(ThickestMillimetres: thickness));
        Assert.Equal(("load-does-not-fit", "/load/thickestMillimetres", "301"), (finding.Code, finding.Field, finding.Value));
    }

    [Fact]
    public void A_wall_thicker_than_the_chamber_is_asked_back()
    {
        var kiln = new StatedKiln(KilnHeat.Electric, Interior: new(400, 200, 300), Wall: new(null, 230));
        var finding = Refusal(kiln, new());
        Assert.Equal(("kiln-wall-too-thick", "/kiln/wall/thicknessMillimetres"), (finding.Code, finding.Field));
        Assert.Contains("200 mm", finding.Allowed.Single().ToString(), StringComparison.Ordinal);
    }

    // kiln-sizes, electric: 64, 76 and 114 mm; typical kilns in the middle of a row keep its figures.
    [Theory]
    [InlineData(20, 64)]
    [InlineData(74, 76)]
    [InlineData(198, 76)]
    [InlineData(600, 114)]
    public void Usual_kilns_have_the_usual_wall(double litres, double millimetres) =>
        Assert.Equal(millimetres, KilnCases.Model.Resolve(new(KilnHeat.Electric, litres)).WallMillimetres);

    [Fact]
    public void Usual_walls_and_power_change_smoothly_with_the_volume()
    {
        KilnSetup Kiln(double litres) => KilnCases.Model.Resolve(new(KilnHeat.Electric, litres));
        for (var litres = 5.0; litres < 1000; litres *= 1.01)
        {
            var (here, next) = (Kiln(litres), Kiln(litres * 1.01));
            Assert.InRange(next.WallMillimetres - here.WallMillimetres, 0, 1.01);
            Assert.InRange(next.RatedKilowatts - here.RatedKilowatts, 0, 0.11 + (0.02 * here.RatedKilowatts));
        }
    }

    private static Finding Refusal(StatedKiln kiln, KilnLoad load) =>
        Assert.Single(Assert.Throws<RefusedException>(() => KilnCases.Model.Resolve(kiln, load)).Findings);
}
