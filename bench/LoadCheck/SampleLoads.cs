using System.Text;

namespace ConeService.Bench.LoadCheck;

/// <summary>Loads of any size, as JSON.</summary>
internal static class SampleLoads
{
    private const string Head = """
        {"kiln":{"heat":"electric","maxCone":"10","atmospheres":["oxidation","neutral"]},
        "firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"},"pieces":[
        """;

    private static readonly string[] Usual =
    [
        """ "body":"mid-range-stoneware-light","coats":[{"glaze":"mid-range-gloss"}],"state":"bisqued","use":"food" """,
        """ "body":"mid-range-stoneware-light","coats":[{"glaze":"underglaze"},{"glaze":"mid-range-gloss"}],"state":"bisqued" """,
        """ "body":"mid-range-stoneware-speckled","coats":[{"glaze":"mid-range-matte"}],"state":"bisqued","use":"food" """,
        """ "body":"mid-range-porcelain","coats":[{"glaze":"mid-range-gloss"}],"state":"bisqued" """,
        """ "body":"ovenware-stoneware","coats":[{"glaze":"iron-red"}],"state":"bisqued","use":"food" """,
        """ "body":"mid-range-stoneware-light","state":"bisqued","use":"decorative" """,
        """ "body":"red-earthenware","coats":[{"glaze":"majolica"}],"state":"bisqued","use":"food" """,
        """ "body":"white-earthenware","coats":[{"glaze":"low-fire-boron-clear"}],"state":"bisqued" """,
        """ "body":"high-fire-porcelain","coats":[{"glaze":"celadon"}],"state":"bisqued","use":"food" """,
        """ "body":"high-fire-stoneware-light","coats":[{"glaze":"tenmoku"}],"state":"bisqued" """,
        """ "body":"mid-range-stoneware-light","state":"bone-dry","thickestMillimetres":9 """,
        """ "body":"high-fire-porcelain","coats":[{"glaze":"lustre-resinate"}],"state":"glaze-fired" """,
    ];

    /// <summary>A class: most pieces belong, some are in the wrong firing.</summary>
    public static byte[] Class(int pieces) => Join(pieces, i => Usual[i % 5 == 4 ? 6 + (i / 5 % 6) : i % 6]);

    /// <summary>Every piece with a body and glaze of its own, half of them in the wrong firing: nothing can be judged once for
    /// several.</summary>
    public static byte[] AllDifferent(int pieces) => Join(pieces, i =>
    {
        string[] cones = i % 2 == 0 ? ["08", "04", "4", "6", "7", "5", "6", "7"] : ["06", "03", "06", "04", "02", "06", "05", "03"];
        return $$$"""
            "ownBody":{"name":"clay {{{i}}}","bisque":{"min":"{{{cones[0]}}}","max":"{{{cones[1]}}}"},
            "mature":{"min":"{{{cones[2]}}}","best":"{{{cones[3]}}}","max":"{{{cones[4]}}}"}},
            "coats":[{"ownGlaze":{"name":"glaze {{{i}}}","cones":{"min":"{{{cones[5]}}}","best":"{{{cones[6]}}}","max":"{{{cones[7]}}}"},
            "atmospheres":["oxidation"]}}],"state":"bisqued"
            """;
    });

    private static byte[] Join(int pieces, Func<int, string> piece)
    {
        var all = Enumerable.Range(0, pieces).Select(i => $$"""{"id":"piece-{{i:0000}}",{{piece(i).Trim()}}}""");
        return Encoding.UTF8.GetBytes(Head + string.Join(',', all) + "]}");
    }
}
