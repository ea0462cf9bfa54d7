using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads bodies and coats: by id, or as described by the caller.</summary>
internal sealed class MaterialReader(LoadTables tables, FieldReader fields)
{
    private static readonly EnumSet<Fume> SpoilsTin = new([Fume.Chrome, Fume.Copper]);

    private readonly MarkReader marks = new(tables, fields);

    /// <summary>Asks for a body: of a single piece that is what is to be judged.</summary>
    public void RequireBody(PieceRequest sent, string at)
    {
        if (sent.OwnBody is null && sent.Body.IsAbsent && !IsSelfGlazing(sent))
            fields.RequiredText(sent.Body, fields.At(at, "/body"), "red-earthenware");
    }

    /// <summary>The body; null with an unknown material or a finding, and where a coat is a body of its own.</summary>
    public Body? Body(PieceRequest sent, string at, List<UnknownMaterial> unknown)
    {
        var (id, own) = (sent.Body, sent.OwnBody);
        if (own is not null && !id.IsAbsent)
        {
            fields.Add(
                FindingCodes.MaterialAmbiguous, fields.At(at, "/ownBody"), null,
                Message.Of("loads.body-ambiguous"), Message.Verbatim(["body", "ownBody"]));
            return null;
        }

        if (own is not null) return marks.Body(own, fields.At(at, "/ownBody"), unknown);
        if (id.IsAbsent)
        {
            if (!IsSelfGlazing(sent)) unknown.Add(new(UnknownAs.NoBody, "", []));
            return null;
        }

        if (fields.RequiredText(id, fields.At(at, "/body"), "red-earthenware") is not { } name) return null;
        if (tables.Materials.RenamedBody(name, fields.At(at, "/body")) is { } renamed)
        {
            fields.Add(renamed);
            return null;
        }

        if (tables.Materials.FindBody(name) is { } body)
        {
            if (body.Mature is null) unknown.Add(new(UnknownAs.BaseClay, name, []) { Within = "/body" });
            return body;
        }

        unknown.Add(new(UnknownAs.Body, name, tables.Materials.NearBodies(name)) { Within = "/body" });
        return null;
    }

    /// <summary>The coats that are known.</summary>
    public List<CoatOnPiece> Coats(IReadOnlyList<CoatRequest?>? sent, List<UnknownMaterial> unknown)
    {
        var coats = new List<CoatOnPiece>(sent?.Count ?? 0);
        for (var i = 0; i < Math.Min(sent?.Count ?? 0, LoadLimits.MostCoats); i++)
        {
            var field = ReasonMaker.CoatPlace(i);
            if (sent![i] is not { } request) fields.Missing(field, [Message.Of("loads.coat-object")]);
            else if (Coat(request, i, field, unknown) is { } coat) coats.Add(coat);
        }

        return coats;
    }

    private CoatOnPiece? Coat(CoatRequest request, int place, string at, List<UnknownMaterial> unknown)
    {
        var contains = request.Contains is null ? default : fields.Set<Fume>(request.Contains, fields.At(at, "/contains")) ?? default;
        Coat? coat;
        if (request.OwnGlaze is { } own)
        {
            if (!request.Glaze.IsAbsent)
            {
                fields.Add(
                    FindingCodes.MaterialAmbiguous, fields.At(at, "/ownGlaze"), null,
                    Message.Of("loads.coat-ambiguous"), Message.Verbatim(["glaze", "ownGlaze"]));
            }

            coat = marks.Glaze(own, fields.At(at, "/ownGlaze"), ReasonMaker.CoatPlace(place), unknown);
        }
        else if (fields.RequiredText(request.Glaze, fields.At(at, "/glaze"), "celadon") is { } name)
        {
            coat = tables.Materials.FindCoat(name);
            if (coat is null && tables.Materials.RenamedCoat(name, fields.At(at, "/glaze")) is { } renamed) fields.Add(renamed);
            else if (coat is null)
                unknown.Add(new(UnknownAs.Coat, name, tables.Materials.NearCoats(name)) { Within = ReasonMaker.CoatPlace(place) });
        }
        else
        {
            coat = null;
        }

        if (coat is null) return null;
        var spoiledBy = contains.Has(Fume.Tin) ? coat.SpoiledBy.With(SpoilsTin) : coat.SpoiledBy;
        if (contains.Has(Fume.Cadmium) || contains.Has(Fume.Selenium)) spoiledBy = spoiledBy.With(Fume.Lead);
        var state = fields.OptionalWord<CoatState>(request.State, fields.At(at, "/state"));
        var firedAt = request.FiredCone.IsAbsent ? null : fields.Cone(request.FiredCone, fields.At(at, "/firedCone"));
        return new(coat, coat.GivesOff.With(contains), spoiledBy)
        {
            Place = place,
            Contains = contains,
            // A cone to which a coat was fired says that it was.
            SaidFired = state is null ? (firedAt is null ? null : true) : state == CoatState.Fired,
            FiredAt = firedAt,
            Where = fields.OptionalWord<CoatWhere>(request.Where, fields.At(at, "/where")),
        };
    }

    // Egyptian paste is body and glaze in one.
    private bool IsSelfGlazing(PieceRequest sent) =>
        sent.Coats?.Any(c => c?.Glaze.Text is { } glaze && tables.Materials.FindCoat(glaze.Trim())?.Kind == CoatKind.SelfGlazing) == true;
}
