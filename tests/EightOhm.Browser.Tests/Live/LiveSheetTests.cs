using EightOhm.Browser.Tests.Browsing;
using EightOhm.Browser.Tests.Hosting;
using EightOhm.Record;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Live;

/// <summary>The live sheet in a browser: what it shows, how it answers a hand, what it says of cells that misbehave, and who may reach it.</summary>
[Collection(LiveHosts.Name)]
public sealed class LiveSheetTests(ChromiumFixture chromium, FewChapters few) : IClassFixture<FewChapters>
{
    private const string Power = "rated power, each channel";

    [SkippableFact]
    public async Task A_chapter_of_the_course_and_one_of_the_design_show_the_words_and_the_charts_of_the_book()
    {
        await using var page = await few.Open(chromium);
        var book = await few.Run();
        foreach (var chapter in new[] { FewChapters.Course, FewChapters.Design })
        {
            await page.GoTo(chapter);
            await page.Press("Calculate the chapter");
            await page.Calm();
            Assert.All(await page.States(), state => Assert.Equal("current", state));
            var (shown, written) = (await page.Shown(), await page.InBook(Path.Combine(book, chapter + ".html")));
            Assert.NotEmpty(written.Charts);
            Assert.Equal(written.Lines, shown.Lines);
            Assert.Equal(written.Charts, shown.Charts);
            // Each chart with data is drawn.
            var charts = page.Page.Locator("figure.eo-figure:has(script)");
            foreach (var chart in await charts.AllAsync())
            {
                await chart.ScrollIntoViewIfNeededAsync();
                await chart.Locator("svg.main-svg .trace").First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
            }
        }

        // What a student has solved so far stands with the chapters: nothing yet.
        Assert.Matches("^Exercises: 0 of [1-9][0-9]* solved$", await page.Page.Locator("p.progress").InnerTextAsync());
        Expect.Nothing(page.Complaints);
    }

    [SkippableFact]
    public async Task While_a_slider_is_dragged_the_record_answers_and_at_rest_every_value_is_that_of_a_run_of_its_own()
    {
        await using var page = await few.Open(chromium);
        await page.GoTo(FewChapters.Design);
        await page.Press("Calculate the chapter");
        await page.Calm();
        var row = await page.Row(Power);
        await LivePage.Field(row).ClickAsync();
        var slider = row.Locator("input[type=range]");
        var before = (await page.Shown()).Lines;
        var box = (await slider.BoundingBoxAsync())!;
        var (x, y) = (box.X + box.Width / 2, box.Y + box.Height / 2);

        await page.Page.Mouse.MoveAsync(x, y);
        await page.Page.Mouse.DownAsync();
        var seen = new HashSet<string>();
        for (var i = 1; i <= 8; i++)
        {
            await page.Page.Mouse.MoveAsync(x + box.Width * i / 40, y);
            // A crowded machine answers late: the hand waits for the first answers, and goes on over the others.
            var late = Environment.TickCount64 + 10_000;
            do
            {
                await Task.Delay(60);
                if (await page.Tried.CountAsync() > 0)
                    seen.Add(await page.Tried.First.Locator("ins").InnerTextAsync());
            }
            while (seen.Count < Math.Min(i, 2) && Environment.TickCount64 < late);
        }

        // The hand still holds it: the sheet has followed, no cell has run, and what only cells know is said to be open.
        Assert.True(seen.Count > 1, string.Join(", ", seen));
        await page.Page.Locator(".standing .stale").WaitForAsync();
        Assert.Equal(before, (await page.Shown()).Lines);
        Assert.All(await page.States(), state => Assert.Equal("current", state));
        Assert.Equal(1, await page.Page.Locator("button.stop:disabled").CountAsync());
        Assert.True(Math.Abs((await slider.BoundingBoxAsync())!.Y - box.Y) < 1);

        await page.Page.Mouse.UpAsync();
        await page.Page.WaitForFunctionAsync("() => !document.querySelector('button.stop').disabled");
        await page.Calm();
        var value = await LivePage.Field(row).InputValueAsync();
        Assert.NotEqual("100 W", value);
        Assert.All(await page.States(), state => Assert.Equal("current", state));
        var shown = await page.Shown();
        Assert.NotEqual(before, shown.Lines);

        var book = await few.Run($"P={value}");
        var written = await page.InBook(Path.Combine(book, FewChapters.Design + ".html"));
        Assert.Equal(written.Lines, shown.Lines);
        Assert.Equal(written.Charts, shown.Charts);
        Expect.Nothing(page.Complaints);
    }

    [SkippableFact]
    public async Task By_keyboard_alone_an_input_is_found_changed_calculated_kept_and_saved_and_nothing_bars_the_way()
    {
        await using var page = await few.Open(chromium);
        await page.GoTo(FewChapters.First);
        Expect.Nothing(await page.Barriers("as opened"));
        var keyboard = page.Page.Keyboard;
        var record = Path.Combine(few.Notebooks, "tern-100", "record.json");
        var wanted = DesignRecord.Load(record).EntryOf("n_ch").Reads == "2" ? "4" : "2";

        await keyboard.PressAsync("F6");
        await Tab(page, "the field", "() => document.activeElement.matches('.row input[type=text]') && document.activeElement.closest('.row').textContent.includes('channels, driven together')");
        await keyboard.TypeAsync(wanted);
        await keyboard.PressAsync("Enter");
        await page.Tried.First.WaitForAsync();
        await page.Calm();
        await keyboard.PressAsync("Alt+Shift+Enter");
        await page.Calm();
        Assert.All(await page.States(), state => Assert.Equal("current", state));
        Expect.Nothing(await page.Barriers("with something tried"));

        await Tab(page, "keep", "() => document.activeElement.textContent === 'keep'", backwards: true);
        await keyboard.PressAsync("Enter");
        await page.Tried.Filter(new() { HasText = "kept" }).WaitForAsync();
        await keyboard.PressAsync("Control+s");
        await page.Page.Locator("#_saved", new() { HasText = "all saved" }).WaitForAsync();
        await page.Page.WaitForFunctionAsync("() => !document.querySelector('.tried li')");
        Assert.Equal(wanted, DesignRecord.Load(record).EntryOf("n_ch").Reads);

        // Into a cell, its code, and out of it again.
        await keyboard.PressAsync("F6");
        await keyboard.PressAsync("Alt+PageDown");
        await Tab(page, "a cell with code", "() => document.activeElement.matches('.cell.code-kind')");
        await keyboard.PressAsync("Enter");
        await page.Page.Locator(".cm-content:focus").WaitForAsync();
        Expect.Nothing(await page.Barriers("while writing"));
        await keyboard.PressAsync("Escape");
        await page.Page.Locator(".cell.code-kind:focus").WaitForAsync();
        await page.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        Expect.Nothing(await page.Barriers("by night"));
        await page.Page.SetViewportSizeAsync(ChromiumFixture.Narrow, 844);
        Expect.Nothing(await page.Barriers("on a telephone"));
        Expect.Nothing(page.Complaints);
    }

    [SkippableFact]
    public async Task A_cell_that_never_ends_and_one_that_ends_the_process_are_named_and_the_others_answer_again()
    {
        await using var page = await few.Open(chromium);
        await page.GoTo(FewChapters.First);
        var last = page.Page.Locator(".cell.code-kind").Last;
        var whole = page.Page.Locator($".cell[data-cell='{await last.GetAttributeAsync("data-cell")}']");

        var endless = await page.AddCode("while (true);");
        await page.Page.Keyboard.PressAsync("Control+Enter");
        await page.Page.Locator(".cell[data-state=running]").WaitForAsync();
        await page.Press("Stop");
        await page.Calm();
        Assert.Equal("edited", await endless.GetAttributeAsync("data-state"));
        await page.Troubles.Filter(new() { HasText = "cell 20: It was stopped" }).First.WaitForAsync();

        var ending = await page.AddCode("Environment.Exit(3);");
        await page.Page.Keyboard.PressAsync("Control+Enter");
        await page.Page.WaitForFunctionAsync("id => document.querySelector(`[data-cell='${id}']`).dataset.state === 'failed'", await ending.GetAttributeAsync("data-cell"));
        Assert.Contains("It ended the whole process with code 3", await ending.Locator(".fault").InnerTextAsync(), StringComparison.Ordinal);
        await page.Troubles.Filter(new() { HasText = "cell 21: It ended the whole process with code 3" }).First.WaitForAsync();
        await page.Calm();

        // Its variables are gone with the process: what the last cell needs is run again, and it gives what it gave.
        var before = await whole.Locator(".outputs").InnerTextAsync();
        await whole.HoverAsync();
        await whole.GetByRole(AriaRole.Button, new() { Name = "Calculate", Exact = true }).First.ClickAsync();
        await page.Calm();
        Assert.Equal("current", await whole.GetAttributeAsync("data-state"));
        Assert.Equal(before, await whole.Locator(".outputs").InnerTextAsync());
        Expect.Nothing(page.Complaints);
        await page.AsSaved();
        Assert.Equal(0, await page.Page.Locator(".cell", new() { HasText = "Environment.Exit" }).CountAsync());
    }

    [SkippableFact]
    public async Task A_page_from_elsewhere_can_neither_read_nor_ask_nor_frame_nor_reach_it_by_another_name()
    {
        await using var page = await few.Open(chromium);
        var chapters = await page.States();
        using var elsewhere = new FolderServer(Directory.CreateDirectory(Path.Combine(few.Notebooks, "..", "elsewhere")).FullName);
        await File.WriteAllTextAsync(Path.Combine(few.Notebooks, "..", "elsewhere", "index.html"), "<!doctype html><title>elsewhere</title><iframe name=frame></iframe>");
        var stranger = await chromium.Stranger();
        await using var context = stranger.Context;
        var statuses = new List<string>();
        stranger.Response += (_, answer) =>
        {
            if (answer.Url.StartsWith(few.Place.AbsoluteUri, StringComparison.Ordinal))
                statuses.Add($"{answer.Request.Method} {answer.Status}");
        };
        var own = few.Place.AbsoluteUri;
        await stranger.GotoAsync(elsewhere.Address.AbsoluteUri);

        Assert.Equal("closed", await stranger.EvaluateAsync<string>(Socket, own.Replace("http:", "ws:", StringComparison.Ordinal) + "socket"));
        Assert.Equal("refused", await stranger.EvaluateAsync<string>("place => fetch(place).then(answer => answer.text()).then(text => text, () => 'refused')", own));
        Assert.Equal("refused", await stranger.EvaluateAsync<string>("place => fetch(place, { mode: 'no-cors' }).then(answer => answer.type, () => 'refused')", own));
        Assert.Equal("refused", await stranger.EvaluateAsync<string>(
            "place => new Promise(done => document.head.append(Object.assign(document.createElement('script'), { src: place + 'page.js', type: 'module', onload: () => done('ran'), onerror: () => done('refused') })))", own));
        await stranger.RunAndWaitForResponseAsync(
            () => stranger.EvaluateAsync("place => { const form = Object.assign(document.createElement('form'), { action: place, method: 'post', target: 'frame' }); document.body.append(form); form.submit(); }", own),
            answer => answer.Request.Method == "POST");
        await stranger.RunAndWaitForResponseAsync(
            () => stranger.EvaluateAsync("place => { document.querySelector('iframe').src = place; }", own),
            answer => answer.Request.ResourceType == "document" && answer.Request.Method == "GET");
        Assert.DoesNotContain(statuses, status => status.EndsWith("200", StringComparison.Ordinal));
        Assert.Contains("POST 403", statuses);

        // A name that was turned to this machine: its page would be of the same origin, so it gets nothing at all.
        var rebound = new UriBuilder(few.Place) { Host = ChromiumFixture.Rebound }.Uri;
        Assert.Equal("closed", await stranger.EvaluateAsync<string>(Socket, new UriBuilder(rebound) { Scheme = "ws", Path = "socket" }.Uri.AbsoluteUri));
        var got = new TaskCompletionSource<int>();
        stranger.Response += (_, answer) => got.TrySetResult(answer.Status);
        // In place of nothing a browser with a window shows a page of its own, which counts as a failure to go there; one without a window shows nothing.
        _ = await Xunit.Record.ExceptionAsync(() => stranger.GotoAsync(rebound.AbsoluteUri));
        Assert.Equal(421, await got.Task);

        // The person's own page has noticed nothing.
        Assert.Equal(chapters, await page.States());
        Expect.Nothing(page.Complaints);
    }

    private const string Socket = "place => new Promise(done => { const socket = new WebSocket(place); socket.onopen = () => done('open'); socket.onmessage = () => done('heard'); socket.onerror = socket.onclose = () => done('closed'); })";

    private static async Task Tab(LivePage page, string to, string isThere, bool backwards = false)
    {
        for (var i = 0; i < 200; i++)
        {
            if (await page.Page.EvaluateAsync<bool>(isThere))
                return;
            await page.Page.Keyboard.PressAsync(backwards ? "Shift+Tab" : "Tab");
        }

        Assert.Fail($"The keyboard does not come to {to}.");
    }
}
