using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using Kiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// Pieces, kilns and firings as load-judgements.csv and studio-loads.csv write them. Body: an id, or own=bisque:mature as
/// own=06-04:5/6/7, own=:6 for a best cone alone, own=mark:5–6, own= for no cones. Coats: ids with @inside, @fired=6, +barium, or
/// own=5/6/7, own=6, own=mark:cone 6, own=?; separated by semicolons. Earlier firings: bisque 06;glaze 6.
/// </summary>
internal static class PieceText
{
    public static Kiln Kiln(string text)
    {
        var words = text.Split(' ');
        var atmospheres = words[0] == "electric" ? "oxidation;neutral" : "oxidation;neutral;reduction";
        var room = words.Length < 3 ? [] : words[2].Split('x');
        return Loads.Kiln(words[0], words[1], atmospheres, room.Length == 0
            ? null
            : new Interior(Loads.Number(room[0]), Loads.Number(room[1]), Loads.Number(room[2])));
    }

    public static FiringRequest Firing(string text)
    {
        var words = text.Split(' ');
        return Loads.Firing(words[0], words[1], words[2]);
    }

    public static PieceRequest Piece(string id, string body, string coats, string state, string use, string earlier = "", string size = "")
    {
        var own = body.StartsWith("own=", StringComparison.Ordinal) ? OwnBody(body[4..]) : null;
        var sides = size.Split('x', StringSplitOptions.RemoveEmptyEntries);
        return new(
            Loads.T(id), default, own is null ? Text(body) : default, own,
            [.. coats.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(Coat)],
            Text(state), Use: Text(use),
            Size: sides.Length == 0 ? null : new SizeRequest(Loads.Number(sides[0]), Loads.Number(sides[1])),
            EarlierFirings: earlier.Length == 0 ? null : [.. earlier.Split(';').Select(Earlier)]);
    }

    private static EarlierFiringRequest Earlier(string text) => new(text.Split(' ')[0], text.Split(' ')[1]);

    private static OwnBodyRequest OwnBody(string text)
    {
        if (text.StartsWith("mark:", StringComparison.Ordinal)) return new("own clay", Mark: text[5..]);
        if (text.Length == 0) return new("own clay");
        var (bisque, mature) = (text.Split(':')[0].Split('-'), text.Split(':')[1]);
        return new("own clay", bisque.Length < 2 ? null : new(bisque[0], bisque[1]), Range(mature));
    }

    private static CoatRequest Coat(string text)
    {
        var contains = text.Split('+').Skip(1).Select(Loads.T).ToList();
        var parts = text.Split('+')[0].Split('@');
        SentText state = default, cone = default, where = default;
        foreach (var part in parts.Skip(1))
        {
            var words = part.Split('=');
            if (words[0] is "fired" or "fresh") (state, cone) = (words[0], words.Length > 1 ? words[1] : default(SentText));
            else where = words[0];
        }

        var own = parts[0].StartsWith("own=", StringComparison.Ordinal) ? OwnGlaze(parts[0][4..]) : null;
        return new(
            own is null ? Loads.T(parts[0]) : default, own, contains.Count == 0 ? null : contains,
            State: state, FiredCone: cone, Where: where);
    }

    private static OwnGlazeRequest OwnGlaze(string text)
    {
        IReadOnlyList<SentText> any = ["oxidation", "neutral", "reduction"];
        if (text == "?") return new("own glaze", null, any);
        return text.StartsWith("mark:", StringComparison.Ordinal)
            ? new("own glaze", null, any, text[5..])
            : new("own glaze", Range(text), any);
    }

    private static OwnRangeRequest Range(string text)
    {
        var cones = text.Split('/');
        return cones.Length == 1 ? new(Best: cones[0]) : new(cones[0], cones[1], cones[2]);
    }

    private static SentText Text(string text) => text.Length == 0 ? default : Loads.T(text);
}
