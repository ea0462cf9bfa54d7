
namespace ConeService.Firing.HeatWork;

/// <summary>How a kiln cools after the last segment.</summary>
internal abstract record CoolDown
{
    private CoolDown()
    {
    }

    /// <summary>The moments of the cooling after <paramref name="from"/>, not including it.</summary>
    internal abstract IEnumerable<HeatPoint> After(HeatPoint from);

    /// <summary>Cooling at a steady rate.</summary>
    /// <param name="KelvinPerHour">How fast, K/h, above 0.</param>
    /// <param name="ToKelvin">Where it ends, K.</param>
    public sealed record AtRate(double KelvinPerHour, double ToKelvin) : CoolDown
    {
        internal override IEnumerable<HeatPoint> After(HeatPoint from)
        {
            if (from.Kelvin > ToKelvin) yield return new(from.Hours + ((from.Kelvin - ToKelvin) / KelvinPerHour), ToKelvin);
        }
    }

    /// <summary>Natural cooling: the temperature falls towards that of the room, T = T_room + (T₀ − T_room)·exp(−t/τ).</summary>
    /// <param name="TimeConstantHours">τ, h: the kiln loses 63 % of its excess in this time.</param>
    /// <param name="RoomKelvin">Temperature of the room, K.</param>
    /// <remarks>
    /// Cut into straight pieces of at most 5 K over the first 300 K, where cones work, and of 2 % of the excess below:
    /// the chord then leaves the curve by less than 0.004 K where it matters.
    /// </remarks>
    public sealed record Natural(double TimeConstantHours, double RoomKelvin) : CoolDown
    {
        private const double FineStep = 5;
        private const double FineRange = 300;
        private const double CoarseShare = 0.02;
        private const double Done = 5;

        /// <summary>The natural cooling that starts at a rate.</summary>
        /// <param name="kelvinPerHour">Rate at the start, K/h.</param>
        /// <param name="fromKelvin">Where it starts, K.</param>
        /// <param name="roomKelvin">Temperature of the room, K.</param>
        public static Natural StartingAt(double kelvinPerHour, double fromKelvin, double roomKelvin) =>
            new((fromKelvin - roomKelvin) / kelvinPerHour, roomKelvin);

        internal override IEnumerable<HeatPoint> After(HeatPoint from)
        {
            var first = from.Kelvin - RoomKelvin;
            for (var excess = first; excess > Done;)
            {
                excess -= first - excess < FineRange ? Math.Min(FineStep, excess / 2) : CoarseShare * excess;
                yield return new(from.Hours + (TimeConstantHours * Math.Log(first / excess)), RoomKelvin + excess);
            }
        }
    }
}
