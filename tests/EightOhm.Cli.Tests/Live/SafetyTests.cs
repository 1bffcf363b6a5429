using System.Net;
using System.Net.Sockets;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cli.Live;
using EightOhm.Cli.Live.Cells;
using EightOhm.Cli.Live.Serving;

namespace EightOhm.Cli.Tests.Live;

/// <summary>A page from elsewhere can neither read nor run, by whatever way it asks.</summary>
public sealed class SafetyTests : IAsyncLifetime, IDisposable
{
    private readonly LiveShop shop = new();
    private Workbench bench = null!;
    private LiveServer server = null!;

    public async Task InitializeAsync()
    {
        shop.Shop.Notebook("01-targets", "1");
        bench = shop.OpenScripted();
        server = await LiveServer.StartAsync(bench, new NoAssistant(), () => { }, 0);
    }

    public async Task DisposeAsync()
    {
        await server.DisposeAsync();
        await bench.DisposeAsync();
    }

    public void Dispose() => shop.Dispose();

    private int Port => new Uri(server.Address()).Port;

    [Theory]
    [InlineData("evil.example:PORT", 421)]
    [InlineData("127.0.0.1", 421)]
    [InlineData("127.0.0.1:1", 421)]
    [InlineData("0.0.0.0:PORT", 421)]
    [InlineData("127.0.0.1:PORT", 200)]
    [InlineData("localhost:PORT", 200)]
    public async Task Another_name_for_this_machine_is_refused(string host, int status) =>
        Assert.Equal(status, await StatusAsync(("Host", Ported(host))));

    [Theory]
    [InlineData("https://evil.example", 403)]
    [InlineData("null", 403)]
    [InlineData("http://127.0.0.1:1", 403)]
    [InlineData("https://127.0.0.1:PORT", 403)]
    [InlineData("http://127.0.0.1:PORT", 200)]
    public async Task Another_origin_is_refused(string origin, int status) =>
        Assert.Equal(status, await StatusAsync(("Host", Ported("127.0.0.1:PORT")), ("Origin", Ported(origin))));

    [Theory]
    [InlineData("cross-site", 403)]
    [InlineData("same-site", 403)]
    [InlineData("same-origin", 200)]
    [InlineData("none", 200)]
    public async Task A_browser_that_says_that_another_site_asks_is_believed(string site, int status) =>
        Assert.Equal(status, await StatusAsync(("Host", Ported("127.0.0.1:PORT")), ("Sec-Fetch-Site", site)));

    [Theory]
    [InlineData("POST")]
    [InlineData("PUT")]
    [InlineData("DELETE")]
    [InlineData("OPTIONS")]
    public async Task Nothing_is_done_by_a_form_or_any_other_method(string method)
    {
        using var client = new HttpClient();
        using var request = new HttpRequestMessage(new HttpMethod(method), $"http://127.0.0.1:{Port}/");
        Assert.Equal(HttpStatusCode.MethodNotAllowed, (await client.SendAsync(request)).StatusCode);
    }

    [Theory]
    [InlineData("/01-targets.ipynb")]
    [InlineData("/../01-targets.ipynb")]
    [InlineData("/..%2f..%2fetc/passwd")]
    [InlineData("/%2e%2e/%2e%2e/etc/passwd")]
    [InlineData("/page.html")]
    [InlineData("/page.css/../../record.json")]
    [InlineData("/socket")]
    [InlineData("//etc/passwd")]
    public async Task No_address_leads_to_a_file_of_the_folder(string path) => Assert.Equal(404, await RawStatusAsync(path, ("Host", Ported("127.0.0.1:PORT"))));

    [Fact]
    public async Task The_page_may_load_its_own_files_and_nothing_else()
    {
        using var client = new HttpClient();
        using var response = await client.GetAsync(new Uri($"http://127.0.0.1:{Port}/"));

        var policy = string.Join(';', response.Headers.GetValues("Content-Security-Policy"));
        foreach (var part in new[] { "default-src 'none'", "script-src 'self'", "connect-src 'self'", "base-uri 'none'", "form-action 'none'", "frame-ancestors 'none'" })
            Assert.Contains(part, policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-inline", policy.Replace("style-src 'self' 'unsafe-inline'", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        Assert.False(response.Headers.Contains("Set-Cookie"));
        Assert.False(response.Headers.Contains("Access-Control-Allow-Origin"));
    }

    [Theory]
    [InlineData("https://evil.example")]
    [InlineData("null")]
    public async Task A_socket_from_another_origin_is_refused(string origin) =>
        await Assert.ThrowsAsync<WebSocketException>(() => LiveClient.ConnectAsync(server.Address(), origin));

    [Fact]
    public async Task A_socket_that_names_no_origin_is_refused()
    {
        var status = await RawStatusAsync("/socket", ("Host", Ported("127.0.0.1:PORT")), ("Connection", "Upgrade"), ("Upgrade", "websocket"), ("Sec-WebSocket-Version", "13"), ("Sec-WebSocket-Key", "dGhlIHNhbXBsZSBub25jZQ=="));
        Assert.Equal(403, status);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("{\"ticket\":\"\"}")]
    [InlineData("{\"ticket\":\"00000000000000000000000000000000\"}")]
    [InlineData("{\"key\":\"guess\"}")]
    [InlineData("{\"ticket\":1}")]
    [InlineData("{\"do\":\"calculate\",\"chapter\":\"01-targets\",\"what\":\"chapter\",\"id\":1}")]
    public async Task Without_a_ticket_nothing_is_told_and_nothing_is_done(string first)
    {
        await using var client = await LiveClient.ConnectAsync(server.Address());
        await client.SendAsync(JsonNode.Parse(first)!.AsObject());

        Assert.Equal("refused", (string?)(await client.ReadAsync())?["type"]);
        Assert.Null(await client.ReadAsync());
        Assert.Empty(shop.Scripted);
    }

    [Fact]
    public async Task A_ticket_is_good_once_and_its_key_for_as_long_as_the_program_runs()
    {
        var address = server.Address();
        await using var first = await LiveClient.EnterAsync(address);
        var key = (string)first.Seen[0]["key"]!;

        await using var second = await LiveClient.ConnectAsync(address);
        await second.SendAsync(new JsonObject { ["ticket"] = LiveClient.Ticket(address) });
        Assert.Equal("refused", (string?)(await second.ReadAsync())?["type"]);

        await using var again = await LiveClient.ConnectAsync(address);
        await again.SendAsync(new JsonObject { ["key"] = key });
        Assert.Equal("welcome", (string?)(await again.ReadAsync())?["type"]);

        var more = (string)(await first.AskAsync(new JsonObject { ["do"] = "another-window" }))["address"]!;
        await using var third = await LiveClient.EnterAsync(more);
    }

    [Fact]
    public async Task What_is_no_wish_is_refused_in_words_and_the_window_goes_on()
    {
        await using var client = await LiveClient.EnterAsync(server.Address());

        Assert.Contains("does not know the wish 'fly'", (string)(await client.AskAsync(new JsonObject { ["do"] = "fly" }))["refused"]!, StringComparison.Ordinal);
        Assert.Contains("lacks its 'chapter'", (string)(await client.AskAsync(new JsonObject { ["do"] = "chapter" }))["refused"]!, StringComparison.Ordinal);
        Assert.Contains("There is no chapter '../x'", (string)(await client.AskAsync(new JsonObject { ["do"] = "chapter", ["chapter"] = "../x" }))["refused"]!, StringComparison.Ordinal);
        Assert.Null((await client.AskAsync(new JsonObject { ["do"] = "chapter", ["chapter"] = "01-targets" }))["refused"]);
        Assert.Contains(client.Seen, m => (string?)m["type"] == "chapter");
    }

    [Fact]
    public async Task A_port_that_is_taken_is_told_with_what_to_try()
    {
        var failure = await Assert.ThrowsAsync<RunFailure>(() => LiveServer.StartAsync(bench, new NoAssistant(), () => { }, Port));
        Assert.Contains($"Port {Port} cannot be had", failure.Message, StringComparison.Ordinal);
        Assert.Contains("Leave --port out", failure.Message, StringComparison.Ordinal);
    }

    private string Ported(string text) => text.Replace("PORT", Port.ToString(System.Globalization.CultureInfo.InvariantCulture), StringComparison.Ordinal);

    private Task<int> StatusAsync(params (string Name, string Value)[] headers) => RawStatusAsync("/", headers);

    // As it stands: a client of the platform would tidy the path.
    private async Task<int> RawStatusAsync(string path, params (string Name, string Value)[] headers)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, Port);
        var stream = client.GetStream();
        await stream.WriteAsync(Encoding.ASCII.GetBytes($"GET {path} HTTP/1.1\r\n{string.Concat(headers.Select(h => $"{h.Name}: {h.Value}\r\n"))}{(headers.Any(h => h.Name == "Connection") ? "" : "Connection: close\r\n")}\r\n"));
        using var reader = new StreamReader(stream);
        return int.Parse((await reader.ReadLineAsync())!.Split(' ')[1], System.Globalization.CultureInfo.InvariantCulture);
    }
}
