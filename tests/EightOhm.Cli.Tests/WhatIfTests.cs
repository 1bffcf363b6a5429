using System.Net;
using System.Text.Json.Nodes;

namespace EightOhm.Cli.Tests;

/// <summary>What is set is told everywhere, and what moved with it.</summary>
public sealed class WhatIfTests : IDisposable
{
    private const string Chapter =
        "var amp = DesignRecord.Open(\"amp.json\");\namp.Target(\"P\", 100.W);\namp.Target(\"R_L\", 8.Ohm);\namp.Choose(\"V_rail\", 45.V);\namp.Target(\"f_max\", 20.kHz);\n" +
        "amp.Derive(\"V_pk\", (Power P, ElectricResistance R_L) => Sqrt(2 * P * R_L));\n" +
        "amp.Derive(\"SR\", (Frequency f_max, ElectricPotential V_rail) => SlewRate.Needed(f_max, V_rail));\n" +
        "amp.Require(\"swing\", \"V_pk\").AtMost(\"V_rail\");\n" +
        "amp.Require(\"band\", \"f_max\").AtLeast(\"f_max\");";

    private readonly Workshop shop = new();

    public void Dispose() => shop.Dispose();

    [Fact]
    public async Task What_is_set_is_told_on_console_index_and_every_page_with_only_what_moved()
    {
        shop.Notebook("a", Chapter);
        shop.Notebook("b", "1");
        await shop.RunAsync(shop.Notebooks, "--save");

        var ran = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W", "--set", "R_L=4 Ω");

        Assert.Equal("", ran.Error);
        Assert.Contains("Set for this run: P = 200 W instead of 100 W.\nSet for this run: R_L = 4 Ω instead of 8 Ω.\n", Plain(ran.Output), StringComparison.Ordinal);
        // √(2·200·4) V is what √(2·100·8) V is.
        Assert.Contains("Nothing moved with it.", ran.Output, StringComparison.Ordinal);
        foreach (var page in new[] { "a", "b", "index" })
            Assert.Contains("What if P = 200 W instead of 100 W; R_L = 4 Ω instead of 8 Ω? These pages show that;", Plain(Page(page)), StringComparison.Ordinal);

        ran = await shop.RunAsync(shop.Notebooks, "--set", "P=200 W");

        Assert.Equal(1, ran.Code);
        Assert.Matches(@"swing\s+40 V\s+56\.57 V\s+at most 45 V \(V_rail\)\s+met → not met: over by 11\.57? V\s+P → V_pk\s+more V_rail", Plain(ran.Output));
        Assert.Matches(@"V_pk\s+40 V\s+56\.57 V\s+P → V_pk", Plain(ran.Output));
        Assert.DoesNotContain("band", ran.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("SR", ran.Output, StringComparison.Ordinal);
        Assert.Contains("1 met, 1 not met.", ran.Output, StringComparison.Ordinal);
        var index = Plain(Page("index"));
        // Symbols are typeset on a page; stripped of that they read as on the console.
        Assert.Matches("(?s)What if P = 200 W.*Set for this run: P.*compliance.*What moved.*P → V_pk.*Chapters", System.Text.RegularExpressions.Regex.Replace(index, "<[^>]*>", ""));
        Assert.Contains(">band</td>", index, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_set_no_page_has_a_banner()
    {
        shop.Notebook("a", Chapter);

        await shop.RunAsync(shop.Notebooks);

        Assert.DoesNotContain("What if", Page("a") + Page("index"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_saved_value_is_told_as_kept_on_every_later_run()
    {
        shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");

        var saved = await shop.RunAsync(shop.Notebooks, "--save", "--set", "P=81 W");

        Assert.Contains("Saved: notebooks and record now hold what was set", saved.Output, StringComparison.Ordinal);
        Assert.Contains("Set, and kept in the record: P = 81 W instead of 100 W.", Plain(Page("a")), StringComparison.Ordinal);
        var later = await shop.RunAsync(shop.Notebooks);
        Assert.Contains("Set, and kept in the record: P = 81 W (the chapter says 100 W).", Plain(later.Output), StringComparison.Ordinal);
        Assert.Contains("Set, and kept in the record: P = 81 W (the chapter says 100 W).", Plain(Page("index")), StringComparison.Ordinal);
        var back = await shop.RunAsync(shop.Notebooks, "--set", "P=");
        Assert.Contains("P = 100 W, as the chapter says, instead of 81 W", Plain(back.Output), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("V_rial=40 V", "Did you mean V_rail?")]
    [InlineData("p=40 W", "Did you mean P?")]
    public async Task A_slip_of_the_fingers_is_answered_with_the_nearest_name(string setting, string words)
    {
        shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");

        var ran = await shop.RunAsync(shop.Notebooks, "--set", setting);

        Assert.Equal(2, ran.Code);
        Assert.Contains(words, ran.Error, StringComparison.Ordinal);
        Assert.Contains("What can be set: P, R_L, V_rail, f_max.", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Only_a_kept_run_with_all_its_answers_leaves_its_stamp()
    {
        var notebook = shop.Notebook("a", Chapter);
        await shop.RunAsync(shop.Notebooks, "--save");
        Assert.NotNull(Stamp(notebook));

        await shop.RunAsync(shop.Notebooks, "--save", "--set", "P=81 W");
        Assert.Null(Stamp(notebook));

        shop.Notebook("a", Chapter, "throw new ShortfallException(\"The rail\", 1.V, \"it sags\", \"Try more.\");");
        await shop.RunAsync(shop.Notebooks, "--save");
        Assert.Null(Stamp(notebook));
    }

    private static JsonNode? Stamp(string notebook) => JsonNode.Parse(File.ReadAllText(notebook))!["metadata"]!["eightohm"];

    // How many digits a round value shows is not what is tested here.
    private static string Plain(string text) => text.Replace(".00 ", " ", StringComparison.Ordinal).Replace(".000 ", " ", StringComparison.Ordinal).Replace(".0 ", " ", StringComparison.Ordinal);

    private string Page(string name) => WebUtility.HtmlDecode(File.ReadAllText(Path.Combine(shop.Book, name + ".html")));
}
