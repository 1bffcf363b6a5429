using System.Net.WebSockets;
using System.Text;
using System.Text.Json.Nodes;

namespace EightOhm.Cli.Tests.Live;

/// <summary>A page without a browser: a socket that speaks as the page does.</summary>
internal sealed class LiveClient : IAsyncDisposable
{
    private readonly ClientWebSocket socket = new();
    private int asked;

    public List<JsonObject> Seen { get; } = [];

    public static string Ticket(string address) => address[(address.IndexOf("#ticket=", StringComparison.Ordinal) + "#ticket=".Length)..];

    /// <summary>Connects, as a page of that origin.</summary>
    public static async Task<LiveClient> ConnectAsync(string address, string? origin = null)
    {
        var client = new LiveClient();
        var page = new Uri(address);
        client.socket.Options.SetRequestHeader("Origin", origin ?? $"http://127.0.0.1:{page.Port}");
        await client.socket.ConnectAsync(new Uri($"ws://127.0.0.1:{page.Port}/socket"), CancellationToken.None);
        return client;
    }

    /// <summary>Connects with the address's ticket, and hears the welcome.</summary>
    public static async Task<LiveClient> EnterAsync(string address)
    {
        var client = await ConnectAsync(address);
        await client.SendAsync(new JsonObject { ["ticket"] = Ticket(address) });
        var welcome = await client.ReadAsync();
        return (string?)welcome?["type"] == "welcome" ? client : throw new InvalidOperationException($"The server did not bid welcome: {welcome?.ToJsonString() ?? "it closed"}.");
    }

    public async Task SendAsync(JsonObject message) =>
        await socket.SendAsync(Encoding.UTF8.GetBytes(message.ToJsonString()), WebSocketMessageType.Text, true, CancellationToken.None);

    /// <summary>The next message; null when the server has closed.</summary>
    public async Task<JsonObject?> ReadAsync()
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(2));
        using var message = new MemoryStream();
        var buffer = new byte[65_536];
        while (true)
        {
            var got = await socket.ReceiveAsync(buffer.AsMemory(), patience.Token);
            if (got.MessageType == WebSocketMessageType.Close)
                return null;
            message.Write(buffer, 0, got.Count);
            if (!got.EndOfMessage)
                continue;
            var read = JsonNode.Parse(message.ToArray())!.AsObject();
            Seen.Add(read);
            return read;
        }
    }

    /// <summary>Wishes for something, and gives the reply; the news before it is among <see cref="Seen"/>.</summary>
    public async Task<JsonObject> AskAsync(JsonObject wish) => await ReplyAsync(await WishAsync(wish));

    /// <summary>Wishes for something, and waits for nothing.</summary>
    /// <returns>The number of the wish.</returns>
    public async Task<int> WishAsync(JsonObject wish)
    {
        wish["id"] = ++asked;
        await SendAsync(wish);
        return asked;
    }

    /// <summary>The reply to a wish.</summary>
    public Task<JsonObject> ReplyAsync(int id) => UntilAsync(m => (string?)m["type"] == "reply" && (int?)m["id"] == id);

    public async Task<JsonObject> UntilAsync(Func<JsonObject, bool> isIt)
    {
        while (await ReadAsync() is { } message)
        {
            if (isIt(message))
                return message;
        }

        throw new InvalidOperationException("The server closed.");
    }

    public ValueTask DisposeAsync()
    {
        socket.Dispose();
        return ValueTask.CompletedTask;
    }
}
