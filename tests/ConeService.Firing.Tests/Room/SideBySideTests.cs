using ConeService.Firing.Room;

namespace ConeService.Firing.Tests.Room;

/// <summary>
/// How many stand side by side. Equal circles in a circle: two at half its diameter, three at 1/(1 + 2/√3) = 0.4641 of it, four at
/// 1/(1 + √2) = 0.4142, five at 1/(1 + 1/sin 36°) = 0.3702, seven at a third (six around one), by elementary geometry.
/// </summary>
public sealed class SideBySideTests
{
    [Theory]
    [InlineData(540, 541, 0)]
    [InlineData(540, 540, 1)]
    [InlineData(540, 271, 1)]
    [InlineData(540, 270, 2)]
    [InlineData(1000, 464.1, 3)]
    [InlineData(1000, 464.2, 2)]
    [InlineData(1000, 414.2, 4)]
    [InlineData(1000, 414.3, 3)]
    [InlineData(1000, 370.1, 5)]
    [InlineData(1000, 370.3, 4)]
    [InlineData(540, 180, 7)]
    public void Discs_on_a_round_shelf(double shelf, double disc, int expected) => Assert.Equal(expected, SideBySide.OnRound(shelf, disc));

    [Theory]
    // Two in a square lie along its diagonal: 1/(1 + 1/√2) = 0.5858 of its side.
    [InlineData(1000, 1000, 585.7, 2)]
    [InlineData(1000, 1000, 585.9, 1)]
    [InlineData(1000, 1000, 500, 4)]
    // Five: four in the corners and one amidst, √2 / (2 + √2) = 0.4142.
    [InlineData(1000, 1000, 414.2, 5)]
    [InlineData(1000, 1000, 414.3, 4)]
    [InlineData(600, 300, 300, 2)]
    [InlineData(600, 300, 301, 0)]
    // Rows set off by half: two of five and one of four between them need 1 + √3 diameters; in less they are drawn out to three of four.
    [InlineData(500, 273.3, 100, 14)]
    [InlineData(500, 273.1, 100, 12)]
    public void Discs_on_a_rectangular_shelf(double width, double depth, double disc, int expected) =>
        Assert.Equal(expected, SideBySide.OnRectangle(width, depth, disc));

    [Theory]
    [InlineData(700, 350, 350, 175, 4)]
    [InlineData(700, 349, 350, 175, 2)]
    [InlineData(700, 340, 340, 175, 4)]
    [InlineData(700, 340, 175, 340, 4)]
    public void Boxes_on_a_rectangular_shelf(double width, double depth, double across, double along, int expected) =>
        Assert.Equal(expected, SideBySide.OnRectangle(width, depth, across, along));

    [Theory]
    // A square on a disc: up to 1/√2 of its diameter; two side by side as a rectangle of 2 to 1: 1/√5 = 0.4472.
    [InlineData(1000, 707, 707, 1)]
    [InlineData(1000, 447, 447, 2)]
    // Four: two by two, 1/(2√2) = 0.3535.
    [InlineData(1000, 353, 353, 4)]
    [InlineData(1000, 354, 354, 2)]
    public void Boxes_on_a_round_shelf(double shelf, double across, double along, int expected) =>
        Assert.Equal(expected, SideBySide.OnRound(shelf, across, along));

    [Fact]
    public void Two_plates_wider_than_half_a_shelf_need_two_layers_though_their_area_is_less_than_one()
    {
        var factors = RoomFactors.Of(Support.Reference.Dataset)!;
        var shelf = new ShelfLayer(20, 6, true, 540, 540, 1, 20);
        var room = MeasuredRoom.Of(factors, 600, 600, 600, true, shelf, null)!;
        // 280 mm and 6 apart: (286/540)² / 0.70 = 0.40 of a layer by area.
        var plate = room.Slot(new(30, 280, null), bisque: false, null);
        var packing = new Packing(room.Room);

        Assert.Equal(KilnRoom.WholeLayer, plate.Share);
        // 575 / (36 + 20) = 10 high, but six layers.
        Assert.Equal(6, packing.MostOf(plate, 100));
        // A plate of 260 mm stands beside another: 2 · 266 ≤ 546.
        Assert.Equal(12, packing.MostOf(room.Slot(new(30, 260, null), bisque: false, null), 100));
    }
}
