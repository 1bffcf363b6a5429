using System.Net;
using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using EightOhm.Display;
using EightOhm.Display.Tests.Schematics;

namespace EightOhm.Browser.Tests;

/// <summary>The words of the drawings as a browser sets them, in its own font.</summary>
public sealed class DrawnWordsTests(ChromiumFixture chromium) : IClassFixture<ChromiumFixture>, IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("eightohm-drawn-");

    public void Dispose() => folder.Delete(recursive: true);

    [SkippableFact]
    public async Task No_word_of_a_drawing_stands_on_another_or_on_a_part()
    {
        var drawings = Examples.Names.Select(name => (name, Drawing: Examples.Of(name).Draw())).ToArray();
        var all = drawings.Select(d => (d.name, d.Drawing.Svg)).Concat(drawings.Where(d => d.Drawing.NarrowSvg is not null).Select(d => (d.name + ", narrow", d.Drawing.NarrowSvg!)));
        Assert.NotEmpty(drawings);
        Assert.Empty(await Faults(all));
    }

    [SkippableFact]
    public async Task Words_that_stand_on_words_on_a_wire_and_on_a_part_are_found()
    {
        const string Drawing = """
            <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 100" width="200" height="100">
            <path fill="none" d="M0 50H90"/><g data-is="Resistor" data-name="R_1"><path fill="none" d="M100 40H120V60H100z"/></g>
            <text x="10" y="20" font-size="14" data-of="R_1">one</text><text x="20" y="22" font-size="14">two</text>
            <text x="10" y="54" font-size="14">wire</text><text x="110" y="54" font-size="14">part</text><text x="150" y="90" font-size="14">free</text>
            </svg>
            """;
        Assert.Equal(["it: \"part\" stands on R_1", "it: \"two\" stands on \"one\"", "it: \"wire\" stands on a wire"], (await Faults([("it", Drawing)])).Order(StringComparer.Ordinal));
    }

    private async Task<string[]> Faults(IEnumerable<(string Name, string Svg)> drawings)
    {
        Needs.Chromium();
        var file = Path.Combine(folder.FullName, "index.html");
        await File.WriteAllTextAsync(file, "<!doctype html><meta charset=\"utf-8\"><title>drawings</title>"
            + string.Concat(drawings.Select(d => $"<div id=\"{WebUtility.HtmlEncode(d.Name)}\">{d.Svg}</div>")));
        await using var page = await chromium.Open(new Uri(file));
        Assert.Empty(page.Errors);
        return await page.Page.EvaluateAsync<string[]>(DrawnWords.Faults);
    }
}
