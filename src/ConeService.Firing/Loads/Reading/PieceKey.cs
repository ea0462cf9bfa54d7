using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;

namespace ConeService.Firing.Loads.Reading;

/// <summary>What makes two pieces alike to every rule.</summary>
internal static class PieceKey
{
    /// <summary>Everything about a piece but its id and count, as text.</summary>
    public static string Of(PieceRequest p)
    {
        var key = new StringBuilder(96);
        // With the length before each text no text can pass for two.
        void Add(SentText t) => key.Append(t.Text?.Length ?? -1).Append(':').Append(t.Text);
        Add(p.Body);
        if (p.OwnBody is { } b)
        {
            foreach (var t in (SentText[])[b.Name, b.Bisque?.Min ?? default, b.Bisque?.Max ?? default, .. Texts(b.Mature), b.Mark]) Add(t);
        }

        foreach (var c in p.Coats ?? [])
        {
            key.Append('|');
            if (c is null) continue;
            Add(c.Glaze);
            if (c.OwnGlaze is { } g)
            {
                foreach (var t in (SentText[])[g.Name, .. Texts(g.Cones), g.Mark]) Add(t);
                foreach (var t in g.Atmospheres ?? []) Add(t);
            }

            key.Append('+');
            foreach (var t in c.Contains ?? []) Add(t);
            if (c.State.IsAbsent && c.FiredCone.IsAbsent && c.Where.IsAbsent) continue;
            key.Append('/');
            Add(c.State);
            Add(c.FiredCone);
            Add(c.Where);
        }

        foreach (var f in p.EarlierFirings ?? [])
        {
            key.Append('<');
            Add(f?.FiringKind ?? default);
            Add(f?.Cone ?? default);
        }

        key.Append('|');
        Add(p.State);
        Add(p.Use);
        Add(p.ThickestMillimetres);
        Add(p.Size?.HeightMillimetres ?? default);
        Add(p.Size?.WidthMillimetres ?? default);
        Add(p.Size?.DepthMillimetres ?? default);
        return key.ToString();
    }

    private static SentText[] Texts(OwnRangeRequest? cones) =>
        cones is null ? [default, default, default] : [cones.Min, cones.Best, cones.Max];
}
