using ConeService.Firing.Room;

namespace ConeService.Firing.Tests.Room;

/// <summary>What stands on which layer.</summary>
public sealed class ShelfPlanTests
{
    [Fact]
    public void Tall_ware_first_and_low_ware_beside_it()
    {
        // Two tall ones fill 0.8 of a layer; of nine low ones two go beside them and seven onto a layer of their own.
        var layers = ShelfPlan.Of([(1, 9, new(60, 1000, 0)), (2, 2, new(200, 4000, 0))]);

        Assert.Equal([200, 60], layers.Select(l => l.Height));
        Assert.Equal([(2, 2), (1, 2)], layers[0].Contents);
        Assert.Equal([(1, 7)], layers[1].Contents);
    }

    [Fact]
    public void What_takes_more_than_half_a_layer_never_shares_it_with_its_like()
    {
        var random = new Random(7);
        for (var round = 0; round < 300; round++)
        {
            // So many alike to a layer, and no fraction of one.
            var pieces = Enumerable.Range(0, 6)
                .Select(k => (k, 1 + random.Next(3), new Slot(30 + (10 * random.Next(20)), 10_000 / (1 + random.Next(9)), 0))).ToList();
            var wide = pieces.Where(p => 2 * p.Item3.Share > KilnRoom.WholeLayer).Select(p => p.k).ToHashSet();
            var layers = ShelfPlan.Of(pieces);

            Assert.All(layers, l => Assert.InRange(l.Contents.Where(c => wide.Contains(c.Key)).Sum(c => c.Count), 0, 1));
            Assert.Equal(pieces.Sum(p => p.Item2), layers.Sum(l => l.Contents.Sum(c => c.Count)));
            Assert.All(layers, l => Assert.All(l.Contents, c => Assert.True(pieces[c.Key].Item3.Height <= l.Height)));
            // As many layers as the rule counts, of its heights.
            var packing = new Packing(new(layers.Sum(l => l.Height + 20), 20, layers.Count));
            foreach (var (_, count, slot) in pieces) packing.Add(slot, count);
            Assert.True(packing.IsWithin);
        }
    }

    [Fact]
    public void What_does_not_go_in_and_stands_there_all_the_same_is_on_a_layer()
    {
        Assert.Equal([(3, 2)], Assert.Single(ShelfPlan.Of([(3, 2, default)])).Contents);
    }
}
