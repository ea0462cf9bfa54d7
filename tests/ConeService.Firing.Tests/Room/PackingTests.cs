using ConeService.Firing.Room;

namespace ConeService.Firing.Tests.Room;

/// <summary>The rule of layers, by hand: 600 mm, shelves of 20 mm, six of them.</summary>
public sealed class PackingTests
{
    private static readonly KilnRoom Chamber = new(600, 20, 6);

    [Theory]
    // 600 / (130 + 20) = 4 layers of ten.
    [InlineData(130, 1000, 40)]
    // 600 / (60 + 20) = 7, but there are six layers.
    [InlineData(60, 2500, 24)]
    // One layer of a piece that is more than half as high.
    [InlineData(300, 5000, 2)]
    [InlineData(581, 5000, 0)]
    public void Pieces_alike_go_in_layer_by_layer(int height, int share, int expected)
    {
        var packing = new Packing(Chamber);

        Assert.Equal(expected, packing.MostOf(new(height, share, 0), 1000));
    }

    [Fact]
    public void Low_ware_stands_beside_tall_ware_on_a_begun_layer()
    {
        var packing = new Packing(Chamber);
        packing.Add(new(380, 5000, 0), 1);

        // 600 − 400 leaves 200 mm: two layers of 80 mm more, and half of the tall one.
        Assert.Equal(5 + 20, packing.MostOf(new(80, 1000, 0), 1000));
        packing.Add(new(80, 1000, 0), 25);
        Assert.True(packing.IsWithin);
        packing.Add(new(80, 1000, 0), 1);
        Assert.False(packing.IsWithin);
    }

    [Fact]
    public void The_volume_of_the_load_check_holds_too_and_fill_is_of_height_or_layers()
    {
        var packing = new Packing(Chamber);

        Assert.Equal(4, packing.MostOf(new(100, 100, 2_500_000), 1000));
        packing.Add(new(130, 10_000, 0), 2);
        // Two of 150 mm of 600 mm.
        Assert.Equal(5000, packing.Fill);
        packing.Clear();
        Assert.True(packing.IsEmpty);
    }
}
