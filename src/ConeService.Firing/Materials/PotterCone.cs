namespace ConeService.Firing.Materials;

/// <summary>A cone of the potter's scale 022 … 14, ready to be compared and counted from.</summary>
internal sealed class PotterCone
{
    internal PotterCone(string text, int order, int step) => (Text, Order, Step) = (text, order, step);

    /// <summary>The cone as text.</summary>
    public string Text { get; }

    /// <summary>Place in the order in which cones go down: twice the step, and one more for a half cone.</summary>
    public int Order { get; }

    /// <summary>Index among the whole cones, 022 is 0; a half cone has that of the whole cone below it.</summary>
    public int Step { get; }

    /// <summary>The cone it is confused with when its zero is lost or added; null where there is none on this scale.</summary>
    public PotterCone? MixUp { get; internal set; }

    /// <summary>Whole cones from this one up to <paramref name="hotter"/>; negative when that is the cooler.</summary>
    public int StepsTo(PotterCone hotter) => hotter.Step - Step;

    /// <summary>True when this cone goes down before <paramref name="other"/>.</summary>
    public bool IsBelow(PotterCone other) => Order < other.Order;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
