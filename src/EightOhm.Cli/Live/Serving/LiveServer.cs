using System.Collections.Concurrent;
using System.Net;
using System.Text;
using System.Text.Json.Nodes;
using EightOhm.Cells;
using EightOhm.Cli.Live.Cells;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace EightOhm.Cli.Live.Serving;

/// <summary>Serves the page to this machine alone, and carries words between its windows and the workbench.</summary>
internal sealed class LiveServer : IAsyncDisposable
{
    private readonly WebApplication app;
    private readonly Workbench bench;
    private readonly Keys keys = new();
    private readonly ConcurrentDictionary<Window, bool> windows = [];
    private readonly CancellationTokenSource ending = new();
    private readonly Desk desk;
    private int port;

    private LiveServer(WebApplication app, Workbench bench, ICellAssistant assistant, Action trust)
    {
        this.app = app;
        this.bench = bench;
        desk = new Desk(bench, assistant, trust, Address);
        bench.News += Tell;
    }

    /// <summary>Starts serving.</summary>
    /// <param name="bench">The workbench.</param>
    /// <param name="assistant">Helps with texts.</param>
    /// <param name="trust">Remembers that the folder's cells may run.</param>
    /// <param name="port">The port; 0 for any that is free.</param>
    /// <exception cref="RunFailure">The port is taken.</exception>
    public static async Task<LiveServer> StartAsync(Workbench bench, ICellAssistant assistant, Action trust, int port)
    {
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions());
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Logging.ClearProviders();
        var app = builder.Build();
        var server = new LiveServer(app, bench, assistant, trust);
        var gate = new Gatekeeper(new PageFiles());
        app.UseWebSockets(new WebSocketOptions { KeepAliveInterval = TimeSpan.FromSeconds(30) });
        app.Run(context => gate.LookAsync(context, server.SpeakAsync));
        try
        {
            await app.StartAsync();
        }
        catch (Exception e) when (e is IOException or System.Net.Sockets.SocketException)
        {
            await app.DisposeAsync();
            throw RunFailure.BadInput($"Port {port} cannot be had: {e.Message} Leave --port out, and any free one is taken, or name another.");
        }

        server.port = new Uri(app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First()).Port;
        return server;
    }

    /// <summary>An address that opens one window.</summary>
    public string Address() => FormattableString.Invariant($"http://127.0.0.1:{port}/#ticket={keys.Ticket()}");

    /// <summary>Tells the windows that the server ends, and ends it.</summary>
    public async ValueTask DisposeAsync()
    {
        bench.News -= Tell;
        Tell(new JsonObject { ["type"] = "ended", ["words"] = "The program was ended. Nothing that was saved is lost; what was not is still on this page: start eightohm open again, and copy it." });
        await Task.WhenAny(Task.WhenAll(windows.Keys.Select(w => Task.Delay(50))), Task.Delay(100));
        await ending.CancelAsync();
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(1));
        try
        {
            await app.StopAsync(patience.Token);
        }
        catch (OperationCanceledException)
        {
            // A window that does not answer is left behind.
        }

        await app.DisposeAsync();
        ending.Dispose();
    }

    private void Tell(JsonObject news)
    {
        if (windows.IsEmpty)
            return;
        var bytes = Encoding.UTF8.GetBytes(news.ToJsonString());
        foreach (var window in windows.Keys)
            window.Send(bytes);
    }

    private async Task SpeakAsync(HttpContext context)
    {
        using var socket = await context.WebSockets.AcceptWebSocketAsync();
        var window = new Window(socket);
        JsonObject? first;
        using (var patience = CancellationTokenSource.CreateLinkedTokenSource(ending.Token))
        {
            patience.CancelAfter(TimeSpan.FromSeconds(10));
            try
            {
                first = await window.ReadAsync(patience.Token);
            }
            catch (Exception e) when (e is OperationCanceledException or System.Net.WebSockets.WebSocketException or IOException)
            {
                return;
            }
        }

        var key = Text(first, "key") is { } known && keys.Knows(known) ? known : keys.Exchange(Text(first, "ticket"));
        if (key is null)
        {
            await RefuseAsync(socket);
            return;
        }

        window.Send(new JsonObject { ["type"] = "welcome", ["key"] = key, ["version"] = BuildVersion.Text, ["folder"] = bench.Root });
        // First in the list, then told of all: what changes in between comes twice rather than never.
        windows[window] = true;
        foreach (var news in bench.All())
            window.Send(news);
        try
        {
            await window.SpeakAsync(desk, ending.Token);
        }
        finally
        {
            windows.TryRemove(window, out _);
        }
    }

    private static async Task RefuseAsync(System.Net.WebSockets.WebSocket socket)
    {
        var words = new JsonObject
        {
            ["type"] = "refused",
            ["words"] = "This address was used already, or is of a program that was ended. In a window that is open choose \"another window\", or start eightohm open again and use the address that it prints.",
        };
        await socket.SendAsync(Encoding.UTF8.GetBytes(words.ToJsonString()), System.Net.WebSockets.WebSocketMessageType.Text, true, CancellationToken.None);
        await socket.CloseOutputAsync(System.Net.WebSockets.WebSocketCloseStatus.PolicyViolation, "refused", CancellationToken.None);
    }

    private static string? Text(JsonObject? message, string name) => message?[name] is JsonValue value && value.TryGetValue<string>(out var text) ? text : null;
}
