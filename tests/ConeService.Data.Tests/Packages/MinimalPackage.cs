using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>
/// The least package that is valid: the schema of the reference package with a handful of rows of its own.
/// What came after 1.5 is left out as its version 1.0.0 may; <see cref="InMemoryPackage.Rank"/> adds the ranks of cones,
/// <see cref="InMemoryPackage.Extend"/> the rest.
/// A table that the schema gains later starts here with its header alone.
/// </summary>
internal static class MinimalPackage
{
    public static InMemoryPackage Create()
    {
        var package = new InMemoryPackage("in-memory");
        var json = JsonNode.Parse(Repository.Data("datapackage.json"))!;
        InMemoryPackage.Unseal(json);
        json["name"] = "minimal";
        foreach (var table in json["resources"]!.AsArray())
        {
            InMemoryPackage.DropLater(table!);
            var header = string.Join(',', table!["schema"]!["fields"]!.AsArray().Select(f => (string?)f!["name"]));
            package.Put((string)table["path"]!, header + "\n" + Rows((string)table["name"]!));
        }

        package.Put("CHANGELOG.md", "# Changes\n\n## 1.0.0 - 2026-01-01\n\n- First.\n");
        json["version"] = "1.0.0";
        package.Put("datapackage.json", json.ToJsonString());
        return package;
    }

    private static string Rows(string table) => table switch
    {
        "sources" => """
            common-practice,practice,Common practice,,,n/a,not-applicable
            derived,derived,Arithmetic,,,CC0,not-applicable
            recalled,memory,A book from memory,,,facts only,no
            seen-chart,chart,A chart,2016,,facts only,whole

            """,
        "cones" => Cones(),
        "charts" => """
            test-chart,Test chart,large,regular,yes,no,seen-chart,published,

            """,
        "end-points" => """
            test-chart,05,60,1031,1888,seen-chart,published,
            test-chart,05,150,1046,1915,seen-chart,published,
            test-chart,04,60,1063,1945,seen-chart,published,
            test-chart,04,150,1070,1958,seen-chart,published,

            """,
        "cone-facts" => """
            end-point-right-angle-bend,end-point,A cone bends.,90,90,90,degrees of bend,common-practice,common-practice,
            held-cone-keeps-bending,soak,It bends slowly.,,,,,seen-chart;recalled,published,

            """,
        "bending-energies" => """
            test-chart,05,600.5,,derived,derived,
            test-chart,04,550.25,,derived,derived,

            """,
        "thermocouple-tolerances" => """
            r-iec-60584-class-1,R,iec-60584,1,beyond,1,0.003,1100,0,1600,seen-chart,published,

            """,
        "heat-work-defaults" => """
            cone-sigma,2.5,K,Spread of cones.,common-practice,estimate,
            drift-base-metal,0.1,K,Drift.,common-practice,estimate,
            drift-cap,10,K,Most drift.,common-practice,estimate,
            drift-from,1100,°C,Where drift begins.,common-practice,estimate,
            drift-noble-metal,0.01,K,Drift.,common-practice,estimate,
            energy-log-sigma,0.2,1,Spread of slopes.,common-practice,estimate,
            full-speed-rate,150,K/h,Full speed.,common-practice,estimate,
            gradient-sigma,0,K,Gradient.,common-practice,estimate,
            room,20,°C,Room.,common-practice,common-practice,

            """,
        "corrections" => """
            end-points,test-chart/04/150,fahrenheit,1958,1959,Misprint,Arithmetic,seen-chart,published

            """,
        "kiln-defaults" => KilnDefaults(),
        "kiln-materials" => """
            fired-clay,load,,,,,kelvin,1128,0.102,-36000000,recalled,from-memory,
            test-brick,wall,560,0.09,0.0001,0,celsius,850,0.25,0,recalled,from-memory,

            """,
        "kiln-sizes" => """
            electric,0,test-brick,76,5.7,common-practice,estimate,
            gas,0,test-brick,114,25,common-practice,estimate,

            """,
        "schedule-templates" => """
            plain,Plain bisque,bisque,04,05,03,common-practice,oxidation,electric,bone-dry,,,,,common-practice,common-practice,

            """,
        "schedule-segments" => """
            plain,1,rise,100,900,,,0,rise,oxidation,,open,,,common-practice,common-practice,
            plain,2,maturing,60,,04,,10,mature,oxidation,,as-normal,,rate,seen-chart,published,

            """,
        "thickness-limits" => """
            drying,10,20,100,50,common-practice,common-practice,
            drying,50,20,100,25,common-practice,common-practice,

            """,
        "cautions" => """
            carbon-monoxide,Hazard,dust,low,every-kiln,maker,firing,Always.,Care.,,seen-chart,published,
            copper-fume,Hazard,dust,low,every-kiln,maker,firing,Always.,Care.,,seen-chart,published,

            """,
        "kiln-heats" => """
            electric,electric kiln,harms-elements,25,carbon-monoxide,seen-chart,published,
            gas,gas kiln,usual,50,carbon-monoxide,seen-chart,published,

            """,
        "firing-kinds" => """
            bisque,bisque firing,electric;gas,oxidation,note,,06,10,bisqued,no,as-glaze,Ware.,Nothing.,carbon-monoxide,seen-chart,published,

            """,
        "clay-bodies" =>
            "test-clay,test clay,,06,04,5,6,7,warps,1,2,3,4,,Soft.,Melts.,,when-mature,dense,oxidation,,,,,,,,,,"
            + "seen-chart,published,published,\n",
        "glazes" =>
            "test-glaze,test glaze,glaze,5,6,7,oxidation,,refuse,,,glaze,bisqued,,Dry.,Runs.,low,,,,no,leach-test,,,,,"
            + "seen-chart,published,published,\n",
        "load-rules" => """
            bisque-suits-lowest-body,clearance,Rule.,must,,,,,,every-firing,,,seen-chart,published,
            suspect-the-zero-first,clearance,Rule.,must,,,,,,every-firing,,,seen-chart,published,

            """,
        "disagreements" => """
            cone-of-test-clay,Cone,clay-bodies/test-clay,Six.,seen-chart,Seven.,common-practice,,Six.,seen-chart,published,

            """,
        _ => "",
    };

    // The model needs every one; id, value and unit as shipped, the rest the least that is valid.
    private static string KilnDefaults() => string.Concat(
        Repository.Data("kiln-defaults.csv").TrimEnd('\n').Split('\n').Skip(1)
        .Select(l => string.Join(',', l.Split(',')[..3]) + ",Meaning.,derived,derived,\n"));

    // 022 … 01 and 1 … 14, with one Seger number and one half cone.
    private static string Cones()
    {
        var rows = new StringBuilder();
        for (var step = 0; step < 36; step++)
        {
            var position = step < 22 ? step - 22 : step - 21;
            var id = position < 0 ? "0" + (-position)
                .ToString(CultureInfo.InvariantCulture) : position.ToString(CultureInfo.InvariantCulture);
            rows.Append(CultureInfo.InvariantCulture, $"{id},{position},whole,{step},seen-chart,published,\n");
            if (id == "06")
                rows.Append("06a,-6,seger-letter,,seen-chart,published,\n05.5,-5.5,half,,seen-chart,published,\n");
        }

        return rows.ToString();
    }
}
