namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// How much longer thick greenware is candled: load rule candle-thick-walls-longer, above 12 mm an hour for each 3 mm, begun ones counted.
/// </summary>
public class CandlingTests
{
    [Theory]
    [InlineData("12.1", "1 h")]
    [InlineData("15", "1 h")]
    [InlineData("15.1", "2 h")]
    [InlineData("24", "4 h")]
    public void Each_begun_step_of_thickness_adds_an_hour(string thickness, string longer)
    {
        var piece = Loads.Piece("tile", "mid-range-stoneware-light", state: "bone-dry") with
        {
            ThickestMillimetres = Loads.Number(thickness),
        };
        var answer = Loads.Check.Check(Loads.Load(Loads.Electric, Loads.Firing("bisque", "06", "oxidation"), piece));
        var instead = Assert.Single(answer.Pieces[0].Reasons).Instead!.ToString();

        Assert.Equal($"Candle at 80 to 95 °C, {longer} longer for the thickness.", instead);
    }

    [Fact]
    public void A_wall_of_just_twelve_millimetres_is_ordinary()
    {
        var piece = Loads.Piece("tile", "mid-range-stoneware-light", state: "bone-dry") with { ThickestMillimetres = 12 };

        Assert.Empty(Loads.Check.Check(Loads.Load(Loads.Electric, Loads.Firing("bisque", "06", "oxidation"), piece)).Pieces[0].Reasons);
    }
}
