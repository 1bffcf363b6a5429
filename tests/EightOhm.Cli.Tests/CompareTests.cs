using System.Globalization;
using CsvHelper;
using EightOhm.Quantities;
using EightOhm.Record;
using UnitsNet;
using static EightOhm.Quantities.Maths;

namespace EightOhm.Cli.Tests;

public sealed class CompareTests : IDisposable
{
    private readonly Workshop shop = new();
    private readonly string before;
    private readonly string after;

    public CompareTests()
    {
        Directory.CreateDirectory(shop.Notebooks);
        before = Path.Combine(shop.Notebooks, "before.json");
        after = Path.Combine(shop.Notebooks, "after.json");
        var amp = DesignRecord.Open(before);
        amp.Target("P", 100.W);
        amp.Target("R_L", 8.Ohm);
        amp.Target("V_rail", 45.V);
        amp.Derive("V_pk", (Power P, ElectricResistance R_L) => Sqrt(2 * P * R_L));
        amp.Require("swing, into {R_L}", "V_pk").AtMost("V_rail");
        File.Copy(before, after);
        DesignRecord.Open(after).Set("P", "200 W");
    }

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task What_differs_is_shown_with_the_way_back_and_the_cures()
    {
        var ran = await CompareAsync(before, after);

        Assert.Equal("", ran.Error);
        Assert.Equal(0, ran.Code);
        Assert.Matches(@"What was moved\n.*\n.*\nP\s+100 W\s+200 W", ran.Output);
        Assert.Matches(@"swing, into 8\.?0* Ω\s+40\.?0* V\s+56\.57 V\s+at most 45\.?0* V \(V_rail\)\s+met → not met: over by 11\.57? V", ran.Output);
        // √(2·200·8) V = 56.57 V against 45 V: more rail, less power, less load resistance; power and resistance under a root move it half as much.
        Assert.Contains("P → V_pk", ran.Output, StringComparison.Ordinal);
        Assert.Matches("more V_rail .*less (P|R_L) .*less (P|R_L) ", ran.Output);
        Assert.Matches(@"Results that differ\n.*\n.*\nV_pk\s+40\.?0* V\s+56\.57 V\s+P → V_pk", ran.Output);
    }

    [Theory]
    [InlineData("")]
    [InlineData("..")]
    public async Task A_run_that_was_ended_while_it_put_a_record_in_place_is_told(string above)
    {
        var promise = Path.Combine(shop.Notebooks, above, ".eightohm-save.json");
        await File.WriteAllTextAsync(promise, "{}");
        var ran = await CompareAsync(before, before);
        Assert.Equal(0, ran.Code);
        Assert.StartsWith($"A run has not ended putting its notebooks and records in place in '{Path.GetDirectoryName(Path.GetFullPath(promise))}'", ran.Output, StringComparison.Ordinal);
        Assert.EndsWith("Nothing differs.\n", ran.Output, StringComparison.Ordinal);
        Assert.True(File.Exists(promise));
        File.Delete(promise);
    }

    [Fact]
    public async Task Two_equal_records_differ_in_nothing() =>
        Assert.Equal("Nothing differs.\n", (await CompareAsync(before, before)).Output);

    [Fact]
    public async Task The_page_stands_alone_and_the_values_can_be_read_by_a_program()
    {
        var page = Path.Combine(shop.Folder, "out", "moved.html");
        var csv = Path.Combine(shop.Folder, "out", "moved.csv");

        Assert.Equal(0, (await CompareAsync(before, after, "--page", page, "--csv", csv)).Code);
        Assert.Equal(0, (await CompareAsync(before, after, "--page", page, "--csv", csv)).Code);

        var html = await File.ReadAllTextAsync(page);
        Assert.Contains("<td", html, StringComparison.Ordinal);
        Assert.Contains("P → V_pk", System.Net.WebUtility.HtmlDecode(System.Text.RegularExpressions.Regex.Replace(html, "<[^>]*>", "")), StringComparison.Ordinal);
        Assert.DoesNotMatch("(src|href)=\"(?!data:)", html);
        using var reader = new CsvReader(new StreamReader(csv), CultureInfo.InvariantCulture);
        var rows = reader.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
        Assert.Equal(["input", "requirement", "result"], rows.Select(r => (string)r["what"]));
        Assert.Equal("swing, into 8.000 Ω".Replace(".000", "", StringComparison.Ordinal), ((string)rows[1]["name"]).Replace(".000", "", StringComparison.Ordinal));
        Assert.StartsWith("met → not met", (string)rows[1]["state"], StringComparison.Ordinal);
        Assert.Equal("P → V_pk", rows[2]["moved by"]);
        Assert.Equal(["moved.csv", "moved.html"], Directory.GetFiles(Path.Combine(shop.Folder, "out")).Select(Path.GetFileName).Order());
    }

    [Theory]
    [InlineData("--csv")]
    [InlineData("--page")]
    public async Task Another_file_is_not_written_over(string option)
    {
        var kept = await File.ReadAllTextAsync(before);

        var ran = await CompareAsync(before, after, option, before);

        Assert.Equal(2, ran.Code);
        Assert.Contains("is something else; it was left as it is", ran.Error, StringComparison.Ordinal);
        Assert.Equal(kept, await File.ReadAllTextAsync(before));
    }

    [Fact]
    public async Task A_record_that_is_not_there_or_is_none_is_refused()
    {
        var missing = await CompareAsync(before, Path.Combine(shop.Folder, "none.json"));
        Assert.Equal(2, missing.Code);
        Assert.Contains("There is no record", missing.Error, StringComparison.Ordinal);

        var none = await CompareAsync(before, shop.File("card.json", "{}"));
        Assert.Equal(2, none.Code);
        Assert.Contains("card.json, line", none.Error, StringComparison.Ordinal);

        var one = await CompareAsync(before);
        Assert.Equal(2, one.Code);
        Assert.Contains("eightohm compare <record> <other-record> [--page] [--csv]", one.Error, StringComparison.Ordinal);
    }

    private static async Task<Ran> CompareAsync(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var code = await CommandLine.InvokeAsync(["compare", .. args], output, error, live: false);
        return new Ran(code, output.ToString(), error.ToString());
    }
}
