using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;
using ConeService.Data;
using SentKiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads a whole load; everything wrong with it is told at once, each with a JSON pointer.</summary>
internal sealed class LoadReader
{
    private static readonly Bounds Alike = Bounds.Of<PieceRequest>(nameof(PieceRequest.Count));

    private readonly LoadTables tables;
    private readonly FieldReader fields;
    private readonly MaterialReader materials;
    private readonly HistoryReader histories;
    private readonly LoadKilnReader kilns;
    private PlannedFiring? planned;

    private LoadReader(LoadTables tables)
    {
        this.tables = tables;
        fields = new(tables);
        materials = new(tables, fields);
        histories = new(tables, fields);
        kilns = new(tables, fields);
    }

    /// <summary>Reads a load.</summary>
    /// <exception cref="RefusedException">Something is wrong; every finding is in it.</exception>
    public static Load Read(LoadTables tables, LoadRequest request)
    {
        var reader = new LoadReader(tables);
        var kiln = reader.kilns.Read(request.Kiln, "/kiln");
        var firing = reader.planned = reader.Firing(request.Firing, "/firing");
        var pieces = reader.Pieces(request.Pieces);
        var reference = reader.fields.Text(request.Ref, "/ref", "load-12");
        var kilns = reader.Kilns(request.Kilns);
        var offered = reader.Offered(request.Offered);
        if (kiln is { Interior: null } && pieces.Exists(p => p.Size is not null))
            reader.fields.Assumed.Add(new("/kiln/interior", "tall enough", Message.Of("loads.room-assumed")));
        return reader.Done(new Load(kiln!, firing!, pieces, reader.fields.Assumed) { Ref = reference, Kilns = kilns, Offered = offered });
    }

    /// <summary>Reads a kiln and a firing.</summary>
    /// <exception cref="RefusedException">Something is wrong; every finding is in it.</exception>
    public static (Kiln Kiln, PlannedFiring Firing) Read(LoadTables tables, SentKiln? sent, FiringRequest? asked)
    {
        var reader = new LoadReader(tables);
        var (kiln, firing) = (reader.kilns.Read(sent, "/kiln"), reader.Firing(asked, "/firing"));
        return reader.fields.Findings.Count == 0 ? (kiln!, firing!) : throw new RefusedException(reader.fields.Findings);
    }

    /// <summary>Reads a piece that is to go into a firing.</summary>
    /// <exception cref="RefusedException">Something is wrong; every finding is in it.</exception>
    public static Piece Read(LoadTables tables, PieceRequest sent, PlannedFiring firing)
    {
        var reader = new LoadReader(tables) { planned = firing };
        var piece = reader.Piece(sent, 0, FieldReader.Item("/pieces", 0));
        return reader.fields.Findings.Count == 0 ? piece! : throw new RefusedException(reader.fields.Findings);
    }

    /// <summary>Reads a pairing as a load of one piece.</summary>
    /// <exception cref="RefusedException">Something is wrong; every finding is in it.</exception>
    public static Load Read(LoadTables tables, PairingRequest request)
    {
        var reader = new LoadReader(tables);
        var firing = reader.planned = reader.Firing(request.Firing, "/firing");
        var kiln = request.Kiln is null ? null : reader.kilns.Read(request.Kiln, "/kiln");
        var sent = new PieceRequest(
            SentText.Of("pairing"), default, request.Body, request.OwnBody, request.Coats, request.State, Use: request.Use,
            EarlierFirings: request.EarlierFirings);
        if (request.Kiln is null && firing is not null)
        {
            kiln = KilnSuitability.Suiting(tables, firing.Needs, firing.Atmosphere);
            reader.fields.Assumed.Add(new("/kiln", EnumWords.Word(kiln.Heat), Message.Of("loads.kiln-assumed")));
        }

        if (request.State.IsAbsent && request.EarlierFirings is null or [] && firing is not null)
        {
            var state = HistoryReader.StateTaken(firing);
            sent = sent with { State = SentText.Of(EnumWords.Word(state)) };
            reader.fields.Assumed.Add(new(
                "/state", EnumWords.Word(state),
                Message.Of("loads.state-assumed", ("kind", firing.Needs.Kind), ("firing", firing.Needs.Name))));
        }
        else if (request.State.IsAbsent && request.EarlierFirings is null or [])
        {
            sent = sent with { State = SentText.Of("bisqued") };
        }

        reader.materials.RequireBody(sent, "");
        var piece = reader.Piece(sent, 0, "");
        var reference = reader.fields.Text(request.Ref, "/ref", "test-12");
        return reader.Done(new Load(kiln!, firing!, piece is null ? [] : [piece], reader.fields.Assumed) { Ref = reference });
    }

    private static Message PiecesAllowed => Message.Of("loads.pieces-allowed", ("most", LoadLimits.MostPieces));

    private Load Done(Load load) => fields.Findings.Count == 0 ? load : throw new RefusedException(fields.Findings);

    private List<Kiln> Kilns(IReadOnlyList<SentKiln?>? sent)
    {
        TooMany(sent?.Count, LoadLimits.MostKilns, "/kilns");
        return [.. (sent ?? []).Take(LoadLimits.MostKilns).Select((k, i) => kilns.Read(k, FieldReader.Item("/kilns", i))).OfType<Kiln>()];
    }

    private List<PlannedFiring> Offered(IReadOnlyList<OfferedFiringRequest?>? sent)
    {
        TooMany(sent?.Count, LoadLimits.MostOffered, "/offered");
        var offered = (sent ?? []).Take(LoadLimits.MostOffered).Select((f, i) => Firing(
            f is null ? null : new(f.FiringKind, f.Cone, f.Atmosphere), FieldReader.Item("/offered", i)));
        return [.. offered.OfType<PlannedFiring>().DistinctBy(f => (f.Kind, f.Cone.Order, f.Atmosphere))];
    }

    private void TooMany(int? count, int most, string at)
    {
        if (count <= most || count is null) return;
        fields.Add(
            FindingCodes.NumberOutOfRange, at, null, Message.Of("loads.list-too-long", ("count", count)),
            [Message.Of("loads.list-allowed", ("most", most))]);
    }

    private PlannedFiring? Firing(FiringRequest? sent, string at)
    {
        if (sent is null)
        {
            fields.Missing(at, [Message.Of("loads.firing-object")]);
            return null;
        }

        var kind = fields.Word<FiringKind>(sent.FiringKind, at + "/firingKind");
        var cone = fields.Cone(sent.Cone, at + "/cone");
        var atmosphere = fields.Word(sent.Atmosphere, at + "/atmosphere", Atmospheres.OfFirings);
        if (!sent.Schedule.IsAbsent && fields.RequiredText(sent.Schedule, at + "/schedule", "slow-bisque") is { } schedule)
            fields.Assumed.Add(new(at + "/schedule", schedule, Message.Of("loads.schedule-not-read")));
        return kind is null || cone is null || atmosphere is null ? null : new(tables.Kind(kind.Value), cone, atmosphere.Value);
    }

    private List<Piece> Pieces(IReadOnlyList<PieceRequest?>? sent)
    {
        var pieces = new List<Piece>(sent?.Count ?? 0);
        if (sent is null or [])
        {
            fields.Add(FindingCodes.EmptyRequest, "/pieces", null, Message.Of("loads.no-pieces"), [PiecesAllowed]);
            return pieces;
        }

        if (sent.Count > LoadLimits.MostPieces)
        {
            fields.Add(FindingCodes.TooManyPieces, "/pieces", sent.Count.ToString(CultureInfo.InvariantCulture),
                Message.Of("loads.too-many-pieces", ("pieces", sent.Count)), [PiecesAllowed], Message.Of("loads.use-a-count"));
        }

        // Counted before any is judged: each may bring a reason of its own, with its sentences.
        var coats = sent.Sum(p => (long)(p?.Coats?.Count ?? 0));
        if (coats > LoadLimits.MostCoatsTogether)
        {
            fields.Add(FindingCodes.TooManyCoats, "/pieces", coats.ToString(CultureInfo.InvariantCulture),
                Message.Of("loads.too-many-coats-together", ("coats", coats)),
                [Message.Of("loads.coats-together-allowed", ("most", LoadLimits.MostCoatsTogether))], Message.Of("loads.use-a-count"));
            return pieces;
        }

        var first = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < Math.Min(sent.Count, LoadLimits.MostPieces); i++)
        {
            Patience.Check();
            var at = FieldReader.Item("/pieces", i);
            if (sent[i] is not { } request)
            {
                fields.Missing(at, [Message.Of("loads.piece-object")]);
                continue;
            }

            if (Piece(request, i, at) is { } piece) pieces.Add(piece);
            if (request.Id is { Kind: SentKind.Text, IsAbsent: false } && !first.TryAdd(request.Id.Text!.Trim(), i))
            {
                fields.Add(FindingCodes.PieceIdRepeated, at + "/id", request.Id.Text,
                    Message.Of("loads.piece-id-repeated", ("id", request.Id.Text), ("place", first[request.Id.Text!.Trim()])),
                    [Message.Of("loads.each-id-once")], Message.Of("loads.use-a-count"));
            }
        }

        return pieces;
    }

    private Piece? Piece(PieceRequest sent, int index, string at)
    {
        // Within the piece pointers start at the piece; where anything is told, that of the piece is put before them.
        var (before, assumed) = (fields.Findings.Count, fields.Assumed.Count);
        var id = fields.RequiredText(sent.Id, "/id", "mug-7");
        var count = fields.Count(sent.Count, "/count", (int)Alike.Low, (int)Alike.High);
        var reference = fields.Text(sent.Ref, "/ref", "booking-7");
        var unknown = new List<UnknownMaterial>();
        var body = materials.Body(sent, "", unknown);
        if (sent.Coats?.Count > LoadLimits.MostCoats)
        {
            fields.Add(FindingCodes.TooManyCoats, "/coats", null,
                Message.Of("loads.too-many-coats", ("coats", sent.Coats.Count)),
                [Message.Of("loads.coats-allowed", ("most", LoadLimits.MostCoats))]);
        }

        var coats = materials.Coats(sent.Coats, unknown);
        var (state, history) = histories.Read(sent, planned, "", unknown);
        var thickness = fields.Millimetres(sent.ThickestMillimetres, "/thickestMillimetres", (decimal)LoadLimits.MostMillimetres);
        var size = Size(sent.Size, "/size");
        var use = fields.OptionalWord<PieceUse>(sent.Use, "/use");
        fields.Locate(at, before, assumed);
        return fields.Findings.Count > before ? null : new Piece
        {
            Id = id!,
            Ref = reference,
            Index = index,
            At = at,
            Count = count ?? 1,
            Body = body,
            Coats = PieceHistory.Settle(coats, state, planned?.Kind == FiringKind.Overglaze),
            Unknown = unknown,
            State = state,
            History = history,
            Thickness = thickness,
            Size = size,
            Use = use,
            Key = PieceKey.Of(sent),
        };
    }

    private Size? Size(SizeRequest? sent, string at)
    {
        if (sent is null) return null;
        if (sent.HeightMillimetres.IsAbsent) fields.Missing(fields.At(at, "/heightMillimetres"), [Message.Of("members.any-millimetres")]);
        var height = fields.Millimetres(sent.HeightMillimetres, fields.At(at, "/heightMillimetres"), (decimal)LoadLimits.MostMillimetres);
        var width = fields.Millimetres(sent.WidthMillimetres, fields.At(at, "/widthMillimetres"), (decimal)LoadLimits.MostMillimetres);
        var depth = fields.Millimetres(sent.DepthMillimetres, fields.At(at, "/depthMillimetres"), (decimal)LoadLimits.MostMillimetres);
        return height is null ? null : new(height.Value, width, depth ?? width) { IsRound = depth is null };
    }
}
