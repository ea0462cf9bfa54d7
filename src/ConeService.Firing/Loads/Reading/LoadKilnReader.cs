using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Kilns;
using SentKiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads the kiln of a load, as far as a load asks about kilns.</summary>
/// <param name="tables">The tables.</param>
/// <param name="fields">Where findings and assumptions go.</param>
internal sealed class LoadKilnReader(LoadTables tables, FieldReader fields)
{
    /// <summary>Reads a kiln; null where something is wrong with it.</summary>
    /// <param name="sent">The kiln.</param>
    /// <param name="at">JSON pointer to it.</param>
    public Kiln? Read(SentKiln? sent, string at)
    {
        if (sent is null)
        {
            fields.Missing(at, [Message.Of("loads.kiln-object")]);
            return null;
        }

        var reader = new KilnReader(sent, tables.Cones, at, fields.Findings);
        var id = reader.Id();
        var heat = reader.Heat();
        var max = fields.Cone(sent.MaxCone, at + "/maxCone", beyond: true);
        var atmospheres = heat == KilnHeat.Electric && sent.Atmospheres is null ? OxidationAssumed(at) : reader.Atmospheres();
        var interior = reader.Room() is { } room ? new Size(room.Height, room.Width, room.Depth) : null;
        var degrees = reader.MostDegrees();
        // A load names no unit of temperature: what is higher, °C, at least tells which cones are out of reach.
        if (!sent.MaxTemperature.IsAbsent)
        {
            fields.Assumed.Add(degrees is null
                ? new(at + "/maxTemperature", "not read", Message.Of("loads.max-temperature-not-read"))
                : new(at + "/maxTemperature", "°C at most", Message.Of("loads.max-temperature-without-unit")));
        }

        return heat is null || max is null || atmospheres is null ? null : new(heat.Value, max.Order, max.Text, new(atmospheres), interior)
        {
            Id = id,
            IsRound = sent.Interior is { DiameterMillimetres.IsAbsent: false },
            ShelfThickness = reader.ShelfThickness(),
            Shelves = reader.Shelves(),
            MostDegrees = degrees,
        };
    }

    // Elements are made for air; who reduces in an electric kiln knows and says so.
    private IReadOnlyList<Atmosphere> OxidationAssumed(string at)
    {
        fields.Assumed.Add(new(at + "/atmospheres", "oxidation", Message.Of("loads.oxidation-assumed")));
        return [Atmosphere.Oxidation];
    }
}
