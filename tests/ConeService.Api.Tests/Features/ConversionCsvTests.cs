using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>CSV of conversions: separators, decimal commas, the sender's own columns, and cones that lost their zeros.</summary>
public class ConversionCsvTests(Support.Api api)
{
    private const string Url = "/v1/conversions";

    // Cone 06 at 60 °C/h is printed at 998 °C (chart of 2016); a decimal comma is what a separator other than the comma leaves free.
    [Theory]
    [InlineData("cone,rate\n06,60C/h\n")]
    [InlineData("cone;rate\n06;60C/h\n")]
    [InlineData("cone\trate\r\n06\t60C/h\r\n")]
    [InlineData("\uFEFF\"cone\";\"rate\"\r\n\"06\";\"60,0C/h\"\r\n")]
    [InlineData("cone;rate\n cone 06 ;60,00C/h\n")]
    [InlineData("cone,rate\nCONE  06,60C/h\n")]
    [InlineData("cone,rate\nCone06,60C/h\n")]
    public async Task Comma_semicolon_and_tab_separate_and_a_cone_is_text_in_any_spelling(string csv)
    {
        var answer = await Answer(csv);
        Assert.Equal(998, answer.GetProperty("lines")[0].GetProperty("endPoint").GetProperty("celsius").GetInt32());
        Assert.Empty(answer.GetProperty("warnings").EnumerateArray());
    }

    // Spreadsheets write “Unicode text” so; its byte order mark tells it.
    [Fact]
    public async Task A_file_in_utf_16_is_read_by_its_byte_order_mark()
    {
        var file = System.Text.Encoding.Unicode;
        byte[] bytes = [.. file.GetPreamble(), .. file.GetBytes("cone,rate\n06,60C/h\n")];
        using var content = new ByteArrayContent(bytes);
        content.Headers.TryAddWithoutValidation("Content-Type", "text/csv");
        using var response = await api.Send(HttpMethod.Post, "/v1/conversions", content);
        var answer = await Support.Api.Read(response, 200);
        Assert.Equal(998, answer.GetProperty("lines")[0].GetProperty("endPoint").GetProperty("celsius").GetInt32());
    }

    [Fact]
    public async Task A_decimal_comma_is_read_where_the_comma_does_not_separate()
    {
        // 1213.5 °C and 60.5 °C/h, as the file of a German spreadsheet has them.
        var answer = await Answer("temperature;rate\n1213,5C;60,5C/h\n");
        var reading = answer.GetProperty("lines")[0].GetProperty("reading");
        Assert.Equal(1213.5m, reading.GetProperty("celsius").GetDecimal());
        Assert.Equal(60.5m, reading.GetProperty("rateCelsiusPerHour").GetDecimal());
    }

    // 1,213 °C can be 1.213 or 1213: the line is refused, named by line and cell, with both readings.
    [Theory]
    [InlineData("temperature,rate\n\"1,213C\",60C/h\n", "line 2, temperature")]
    [InlineData("cone,rate\n06,60C/h\n6,\"1,213C/h\"\n", "line 3, rate")]
    [InlineData("temperature\n\"1,213 °C\"\n", "line 2, temperature")]
    public async Task A_number_that_may_be_a_thousand_is_refused_on_its_line(string csv, string field)
    {
        var problem = (await Answer(csv)).GetProperty("lines").EnumerateArray().Last().GetProperty("problems")[0];
        Assert.Equal(("number-ambiguous", field), (problem.GetProperty("code").GetString(), problem.Place()));
        Assert.Contains("1,213", problem.GetProperty("value").GetString(), StringComparison.Ordinal);
        var allowed = problem.GetProperty("allowed").Strings().ToList();
        Assert.StartsWith("1.213", allowed[0], StringComparison.Ordinal);
        Assert.StartsWith("1213", allowed[1], StringComparison.Ordinal);
    }

    // With semicolons the comma is decimal, but 1,213 alone is no proof of it; beside 60,5 a point could mean thousands.
    [Theory]
    [InlineData("temperature;rate\n1,213C;60C/h\n", "line 2")]
    [InlineData("temperature\trate\n1100C\t60C/h\n1,213C\t60C/h\n", "line 3")]
    [InlineData("temperature;rate\n1.213C;60,5C/h\n", "line 2")]
    public async Task A_file_whose_decimals_nothing_tells_is_refused(string csv, string field)
    {
        using var response = await api.Post(Url, csv, "text/csv");
        var finding = Assert.Single(await Problems.Findings(response, 400, "number-ambiguous"));
        Assert.Equal(field, finding.Place());
    }

    [Fact]
    public async Task Three_decimals_are_read_where_another_number_shows_what_the_comma_is()
    {
        var answer = await Answer("temperature;rate\n1000,125C;60C/h\n999,5C;60C/h\n850,125C;60C/h\n");
        Assert.Equal(
            [1000.125m, 999.5m, 850.125m],
            answer.GetProperty("lines").EnumerateArray().Select(l => l.GetProperty("reading").GetProperty("celsius").GetDecimal()));
    }

    [Fact]
    public async Task Columns_of_the_sender_come_back_in_their_places()
    {
        const string csv = "Kiln,Cone,Piece no.,rate,notes\nK1,06, 007 ,60C/h,\"a, \"\"b\"\"\"\nK2,6,x,60C/h,-\n";
        var lines = await Csv(csv);
        Assert.StartsWith(
            "line,Kiln,cone,Piece no.,rate,notes,temperature,chart,celsius,fahrenheit,reached,", lines[0], StringComparison.Ordinal);
        // The answer has notes of its own: theirs keep the name.
        Assert.Contains(",answer_notes,", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("1,K1,cone 06, 007 ,60C/h,\"a, \"\"b\"\"\",,,998,1828,", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("2,K2,cone 6,x,60C/h,-,,,1222,2232,", lines[2], StringComparison.Ordinal);
    }

    // What a spreadsheet would run as a formula gets an apostrophe (OWASP, CSV Injection); a number with its sign is none.
    [Theory]
    [InlineData("=1+1", "'=1+1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("+K2", "'+K2")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("\t=1", "'\t=1")]
    [InlineData("-12", "-12")]
    [InlineData("+3.5", "+3.5")]
    [InlineData("-", "-")]
    [InlineData("a=b", "a=b")]
    public async Task What_a_spreadsheet_would_run_is_carried_inert(string cell, string carried)
    {
        var lines = await Csv($"{cell},cone,rate\n{cell},06,60C/h\n");
        Assert.StartsWith($"line,{carried},cone,", lines[0], StringComparison.Ordinal);
        Assert.StartsWith($"1,{carried},cone 06,", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_short_line_and_a_cone_that_is_none_are_carried_as_they_are()
    {
        var lines = await Csv("cone,rate,kiln\n06\n0,60C/h,K1\n");
        Assert.StartsWith("1,cone 06,,,,,998,1828,", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("2,0,60C/h,K1,,,,", lines[2], StringComparison.Ordinal);
    }

    // The header is line 1, and the empty line 3 and the quoted line break of line 4 count in the file: cone 7 begins in line 6.
    [Fact]
    public async Task A_line_is_numbered_among_those_answered_and_in_its_file_as_problems_are()
    {
        const string csv = "cone,rate,notes\n06,60C/h,\n\n6,60C/h,\"two\nlines\"\n7,60C/h,\n0,60C/h,\n";
        var lines = (await Answer(csv)).GetProperty("lines").EnumerateArray().ToList();
        Assert.Equal([1, 2, 3, 4], lines.Select(l => l.GetProperty("line").GetInt32()));
        Assert.Equal([2, 4, 6, 7], lines.Select(l => l.GetProperty("fileLine").GetInt32()));
        Assert.Equal("line 7, cone", lines[3].GetProperty("problems")[0].Place());
        var rows = await Csv("cone,rate\n06,60C/h\n\n7,60C/h\n");
        Assert.EndsWith(",problem,problem_detail,file_line", rows[0], StringComparison.Ordinal);
        Assert.StartsWith("2,cone 7,", rows[2], StringComparison.Ordinal);
        Assert.EndsWith(",,4", rows[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task JSON_has_no_file_and_so_no_line_of_one()
    {
        using var response = await api.Post(Url, """{"lines":[{"cone":"6"}]}""");
        var line = (await Support.Api.Read(response, 200)).GetProperty("lines")[0];
        Assert.Equal((1, JsonValueKind.Null), (line.GetProperty("line").GetInt32(), line.GetProperty("fileLine").ValueKind));
    }

    [Fact]
    public async Task An_answer_of_JSON_names_the_columns_it_has_no_place_for()
    {
        var warning = Assert.Single((await Answer("cone,kiln\n06,K1\n")).GetProperty("warnings").EnumerateArray());
        Assert.Equal("columns-ignored", warning.GetProperty("code").GetString());
        Assert.Contains("kiln", warning.GetProperty("message").GetString(), StringComparison.Ordinal);
    }

    // A spreadsheet took the zeros: no cone of the file has one, and 6 and 7 have twins. Lines count from 1, the header is line 1.
    [Fact]
    public async Task Cones_without_any_zero_are_warned_of_with_their_lines_in_JSON_and_in_CSV()
    {
        const string csv = "cone,rate\n6,60C/h\n\n7,60C/h\ncone 9,60C/h\n,60C/h\n";
        var warning = Assert.Single((await Answer(csv)).GetProperty("warnings").EnumerateArray());
        Assert.Equal("zeros-lost", warning.GetProperty("code").GetString());
        Assert.Equal([2, 4], warning.GetProperty("lines").EnumerateArray().Select(l => l.GetInt32()));
        var message = warning.GetProperty("message").GetString()!;
        Assert.Contains("2, 4", message, StringComparison.Ordinal);
        Assert.Contains("spreadsheet", message, StringComparison.Ordinal);
        Assert.Contains("cone 06", message, StringComparison.Ordinal);
        var lines = await Csv(csv);
        Assert.Equal([true, true, false, false], lines.Skip(1).Select(l => l.Contains("zeros-lost: ", StringComparison.Ordinal)));
        Assert.Contains(",notes,warning,dataset_version,", lines[0], StringComparison.Ordinal);
        // It is answered as it was written all the same.
        Assert.StartsWith("1,cone 6,60C/h,,,1222,", lines[1], StringComparison.Ordinal);
    }

    [Theory]
    // One zero left shows that nothing took them away.
    [InlineData("cone\n6\n06\n")]
    [InlineData("cone\n6\no5\n")]
    // Text is no number to a spreadsheet, and was meant.
    [InlineData("cone\ncone 6\n^7\n")]
    // The zero cones begin at 022: 26 has no twin.
    [InlineData("cone,chart\n26,pce\n")]
    [InlineData("temperature\n1222C\n")]
    public async Task Cones_that_lost_nothing_are_not_warned_of(string csv) =>
        Assert.Empty((await Answer(csv)).GetProperty("warnings").EnumerateArray());

    [Fact]
    public async Task JSON_keeps_text_apart_from_numbers_and_is_not_warned()
    {
        using var response = await api.Post(Url, """{"lines":[{"cone":"6"},{"cone":"7"}]}""");
        Assert.Empty((await Support.Api.Read(response, 200)).GetProperty("warnings").EnumerateArray());
    }

    // An upload that comes back as an answer can be sent again: its cones say cone 06.
    [Fact]
    public async Task An_answer_can_be_sent_again()
    {
        var again = await Csv(string.Join('\n', await Csv("cone,rate\n06,60C/h\n")) + "\n");
        Assert.Contains(",cone 06,", again[1], StringComparison.Ordinal);
        Assert.Contains("answer_celsius", again[0], StringComparison.Ordinal);
        Assert.Equal(3, again[1].Split(",998,").Length);
    }

    private async Task<JsonElement> Answer(string csv)
    {
        using var response = await api.Post(Url, csv, "text/csv");
        return await Support.Api.Read(response, 200);
    }

    private async Task<string[]> Csv(string csv)
    {
        using var response = await api.Post(Url, csv, "text/csv", "text/csv");
        Assert.Equal(200, (int)response.StatusCode);
        return (await response.Content.ReadAsStringAsync(Support.Api.Cancel)).TrimEnd('\n').Split('\n');
    }
}
