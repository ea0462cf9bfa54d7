using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads a whole load; everything wrong with it is told at once, each with a JSON pointer.</summary>
internal sealed class LoadReader
{
    /// <summary>The most pieces of one request.</summary>
    public const int MostPieces = 2000;

    private const int MostAlike = 10_000;
    private const int MostCoats = 12;
    private const decimal MostMillimetres = 5000;

    private readonly LoadBook book;
    private readonly FieldReader fields;
    private readonly MaterialReader materials;

    private LoadReader(LoadBook book)
    {
        this.book = book;
        fields = new(book);
        materials = new(book, fields);
    }

    /// <summary>Reads a load.</summary>
    /// <exception cref="RefusedException">Something is wrong; every finding is in it.</exception>
    public static Load Read(LoadBook book, LoadRequest request)
    {
        var reader = new LoadReader(book);
        var kiln = reader.Kiln(request.Kiln, "/kiln");
        var firing = reader.Firing(request.Firing, "/firing");
        var pieces = reader.Pieces(request.Pieces);
        if (kiln is { Interior: null } && pieces.Exists(p => p.Size is not null))
            reader.fields.Assumed.Add(new("/kiln/interior", "tall enough", "The kiln's room was not told; no piece was measured against it."));
        return reader.Done(new Load(kiln!, firing!, pieces, reader.fields.Assumed));
    }

    /// <summary>Reads a pairing as a load of one piece.</summary>
    /// <exception cref="RefusedException">Something is wrong; every finding is in it.</exception>
    public static Load Read(LoadBook book, PairingRequest request)
    {
        var reader = new LoadReader(book);
        var firing = reader.Firing(request.Firing, "/firing");
        var kiln = request.Kiln is null ? null : reader.Kiln(request.Kiln, "/kiln");
        var sent = new PieceRequest(SentText.Of("pairing"), default, request.Body, request.OwnBody, request.Coats, request.State, Use: request.Use);
        if (request.Kiln is null && firing is not null)
        {
            kiln = Kilns.Suiting(book, firing.Needs, firing.Atmosphere);
            reader.fields.Assumed.Add(new("/kiln", EnumWords.Word(kiln.Heat), "No kiln was named; one that suits the firing is taken."));
        }

        if (request.State.IsAbsent && firing is not null)
        {
            // The last of the states it takes, but for a glaze fire, which is the first of bisqued ware before a refire.
            var state = firing.Needs.Takes.Has(PieceState.Bisqued) ? PieceState.Bisqued : firing.Needs.Row.Takes[0];
            sent = sent with { State = SentText.Of(EnumWords.Word(state)) };
            reader.fields.Assumed.Add(new("/state", EnumWords.Word(state), $"No state was named; it is what {firing.Needs.AName} takes."));
        }
        else if (request.State.IsAbsent)
        {
            sent = sent with { State = SentText.Of("bisqued") };
        }

        var piece = reader.Piece(sent, 0, "");
        return reader.Done(new Load(kiln!, firing!, piece is null ? [] : [piece], reader.fields.Assumed));
    }

    private Load Done(Load load) => fields.Findings.Count == 0 ? load : throw new RefusedException(fields.Findings);

    private Kiln? Kiln(KilnRequest? sent, string at)
    {
        if (sent is null)
        {
            fields.Missing(at, ["an object with heat, maxCone and atmospheres"]);
            return null;
        }

        if (!sent.Id.IsAbsent) fields.Text(sent.Id, at + "/id", "front-loader");
        var heat = fields.Word<KilnHeat>(sent.Heat, at + "/heat");
        var max = fields.Cone(sent.MaxCone, at + "/maxCone", beyond: true);
        var atmospheres = fields.Words(sent.Atmospheres, at + "/atmospheres", Atmospheres.OfFirings);
        var interior = Size(sent.Interior, at + "/interior");
        return heat is null || max is null || atmospheres is null ? null : new(heat.Value, max.Order, max.Text, atmospheres.Value, interior);
    }

    private Firing? Firing(FiringRequest? sent, string at)
    {
        if (sent is null)
        {
            fields.Missing(at, ["an object with kind, cone and atmosphere"]);
            return null;
        }

        var kind = fields.Word<FiringKind>(sent.Kind, at + "/kind");
        var cone = fields.Cone(sent.Cone, at + "/cone");
        var atmosphere = fields.Word(sent.Atmosphere, at + "/atmosphere", Atmospheres.OfFirings);
        if (!sent.Schedule.IsAbsent && fields.Text(sent.Schedule, at + "/schedule", "slow-bisque") is { } schedule)
            fields.Assumed.Add(new(at + "/schedule", schedule, "Schedules are not read by the load check: it takes the cone to be reached, with no hold that would take the ware further."));
        return kind is null || cone is null || atmosphere is null ? null : new(book.Kind(kind.Value), cone, atmosphere.Value);
    }

    private List<Piece> Pieces(IReadOnlyList<PieceRequest?>? sent)
    {
        var pieces = new List<Piece>(sent?.Count ?? 0);
        if (sent is null or [])
        {
            fields.Add("empty-request", "/pieces", null, "The load holds no pieces.", ["1 to 2,000 pieces"]);
            return pieces;
        }

        if (sent.Count > MostPieces)
            fields.Add("too-many-pieces", "/pieces", sent.Count.ToString(CultureInfo.InvariantCulture), $"The load holds {sent.Count} pieces.", ["1 to 2,000 pieces"], "Several alike are one piece with a count.");
        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < Math.Min(sent.Count, MostPieces); i++)
        {
            var at = FieldReader.Item("/pieces", i);
            if (sent[i] is not { } request)
            {
                fields.Missing(at, ["an object with id, body and state"]);
                continue;
            }

            if (Piece(request, i, at) is { } piece) pieces.Add(piece);
            if (request.Id is { Kind: SentKind.Text, IsAbsent: false } && !first.TryAdd(request.Id.Text!.Trim(), i))
                fields.Add("piece-id-repeated", at + "/id", request.Id.Text, $"The id “{request.Id.Text}” is that of piece {first[request.Id.Text!.Trim()]} already.", ["each id once"], "Several alike are one piece with a count.");
        }

        return pieces;
    }

    private Piece? Piece(PieceRequest sent, int index, string at)
    {
        var before = fields.Findings.Count;
        var id = fields.Text(sent.Id, at + "/id", "mug-7");
        fields.Number(sent.Count, at + "/count", 1, MostAlike, whole: true);
        var unknown = new List<UnknownMaterial>();
        var body = materials.Body(sent.Body, sent.OwnBody, at, unknown);
        if (sent.Coats?.Count > MostCoats) fields.Add("too-many-coats", at + "/coats", null, $"The piece has {sent.Coats.Count} coats.", [$"up to {MostCoats} coats"]);
        var coats = materials.Coats(sent.Coats, at, unknown);
        var state = fields.Word<PieceState>(sent.State, at + "/state");
        var thickness = fields.Number(sent.ThicknessMillimetres, at + "/thicknessMillimetres", 0, MostMillimetres);
        var size = Size(sent.Size, at + "/size");
        var use = fields.OptionalWord<PieceUse>(sent.Use, at + "/use");
        return fields.Findings.Count > before ? null : new Piece
        {
            Id = id!,
            Index = index,
            Body = body,
            Coats = coats,
            Unknown = unknown,
            State = state!.Value,
            Thickness = thickness,
            Size = size,
            Use = use,
            Key = PieceKey.Of(sent),
        };
    }

    private Size? Size(SizeRequest? sent, string at)
    {
        if (sent is null) return null;
        if (sent.HeightMillimetres.IsAbsent) fields.Missing(at + "/heightMillimetres", ["a number of millimetres"]);
        var height = fields.Number(sent.HeightMillimetres, at + "/heightMillimetres", 0, MostMillimetres);
        var width = fields.Number(sent.WidthMillimetres, at + "/widthMillimetres", 0, MostMillimetres);
        var depth = fields.Number(sent.DepthMillimetres, at + "/depthMillimetres", 0, MostMillimetres);
        return height is null ? null : new(height.Value, width, depth ?? width);
    }
}
