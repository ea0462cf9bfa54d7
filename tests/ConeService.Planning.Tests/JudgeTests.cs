using ConeService.Planning.Judge;
using ConeService.Planning.Model;

namespace ConeService.Planning.Tests;

/// <summary>Judge and model of room count each in its own way.</summary>
public sealed class JudgeTests
{
    private static readonly KilnRoom Chamber = new(600, 20, 6);

    [Fact]
    public void The_judge_counts_the_same_room_in_its_own_way()
    {
        var random = new Random(18);
        for (var round = 0; round < 500; round++)
        {
            var slots = Enumerable.Range(0, 5).Select(_ => new Slot(40 + random.Next(300), 500 + random.Next(6000), 0)).ToList();
            var kiln = new KilnModel
            {
                Index = 0,
                Room = Chamber,
                Starts = [0],
                Loading = 0,
                Types = [],
                Ends = [],
                Slots = slots,
            };
            var contents = slots.Select((_, i) => new StageCount(i, 1 + random.Next(3))).ToList();
            var packing = new Packing(Chamber);
            foreach (var (stage, count) in contents) packing.Add(slots[stage], count);

            Assert.Equal(DraftJudge.HasRoom(kiln, contents), packing.IsWithin);
        }
    }
}
