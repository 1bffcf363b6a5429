using System.Net.WebSockets;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Threading.Channels;

namespace EightOhm.Cli.Live.Serving;

/// <summary>A window of a browser: its wishes are taken one after the other, in their order; of several places of a slider only the newest.</summary>
/// <param name="socket">The connection.</param>
internal sealed class Window(WebSocket socket)
{
    /// <summary>The longest wish, in bytes: no cell has a text of that length.</summary>
    public const int Most = 4_000_000;

    private readonly Channel<byte[]> outgoing = Channel.CreateUnbounded<byte[]>(new UnboundedChannelOptions { SingleReader = true });
    private readonly Channel<JsonObject> wishes = Channel.CreateUnbounded<JsonObject>(new UnboundedChannelOptions { SingleReader = true, SingleWriter = true });

    /// <summary>Sends news when what was sent before is gone.</summary>
    public void Send(JsonObject news) => outgoing.Writer.TryWrite(Encoding.UTF8.GetBytes(news.ToJsonString()));

    /// <summary>Sends news that is text already.</summary>
    public void Send(byte[] news) => outgoing.Writer.TryWrite(news);

    /// <summary>The next message; null when the window is closed, or sends what is none.</summary>
    public async Task<JsonObject?> ReadAsync(CancellationToken cancellation)
    {
        using var message = new MemoryStream();
        var buffer = new byte[16_384];
        while (true)
        {
            var got = await socket.ReceiveAsync(buffer.AsMemory(), cancellation);
            if (got.MessageType != WebSocketMessageType.Text || message.Length + got.Count > Most)
                return null;
            message.Write(buffer, 0, got.Count);
            if (got.EndOfMessage)
                break;
        }

        try
        {
            return JsonNode.Parse(message.ToArray()) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>Speaks with the window until it is closed.</summary>
    /// <param name="desk">Does what is wished.</param>
    /// <param name="cancellation">Cancelled when the server ends.</param>
    public async Task SpeakAsync(Desk desk, CancellationToken cancellation)
    {
        using var gone = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        var sending = SendAllAsync(gone.Token);
        var doing = DoAllAsync(desk, gone.Token);
        try
        {
            while (await ReadAsync(gone.Token) is { } wish)
            {
                // Help with a text waits for nothing, and nothing waits for it.
                if (wish["do"]?.ToString() is "complete" or "signature" or "hover" or "diagnose" or "stop")
                    _ = AnswerAsync(desk, wish, gone.Token);
                else
                    wishes.Writer.TryWrite(wish);
            }
        }
        catch (Exception e) when (e is WebSocketException or OperationCanceledException or IOException)
        {
            // The window was closed without a word.
        }
        finally
        {
            wishes.Writer.TryComplete();
            await doing;
            outgoing.Writer.TryComplete();
            await Task.WhenAny(sending, Task.Delay(200, CancellationToken.None));
            await gone.CancelAsync();
            await sending;
        }
    }

    private async Task DoAllAsync(Desk desk, CancellationToken cancellation)
    {
        await foreach (var wish in wishes.Reader.ReadAllAsync(CancellationToken.None))
        {
            if (IsOvertaken(wish))
                Reply(wish, new JsonObject { ["overtaken"] = true });
            else
                await AnswerAsync(desk, wish, cancellation);
        }
    }

    private bool IsOvertaken(JsonObject wish) =>
        IsDragging(wish) && wishes.Reader.TryPeek(out var next) && next["do"]?.ToString() == "try" && next["name"]?.ToString() == wish["name"]?.ToString();

    private static bool IsDragging(JsonObject wish) =>
        wish["do"]?.ToString() == "try" && wish["dragging"] is JsonValue value && value.TryGetValue<bool>(out var dragging) && dragging;

    private async Task AnswerAsync(Desk desk, JsonObject wish, CancellationToken cancellation)
    {
        try
        {
            var reply = await desk.DoAsync(wish, cancellation);
            // What is asked for comes before the word that it came.
            if (reply.Remove("news", out var news) && news is JsonObject told)
                Send(told);
            Reply(wish, reply);
        }
        catch (LiveRefusal refusal)
        {
            Reply(wish, new JsonObject { ["refused"] = PlainText.Of(refusal.Message) });
        }
        catch (OperationCanceledException) when (cancellation.IsCancellationRequested)
        {
            // Nobody waits for it.
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            Reply(wish, new JsonObject { ["refused"] = PlainText.Of($"That did not work, and nothing of it was done: {e.Message}") });
        }
    }

    private void Reply(JsonObject wish, JsonObject says)
    {
        says["type"] = "reply";
        says["id"] = wish["id"]?.DeepClone();
        Send(says);
    }

    private async Task SendAllAsync(CancellationToken cancellation)
    {
        try
        {
            await foreach (var news in outgoing.Reader.ReadAllAsync(cancellation))
                await socket.SendAsync(news, WebSocketMessageType.Text, endOfMessage: true, cancellation);
            if (socket.State is WebSocketState.Open or WebSocketState.CloseReceived)
                await socket.CloseOutputAsync(WebSocketCloseStatus.NormalClosure, null, cancellation);
        }
        catch (Exception e) when (e is WebSocketException or OperationCanceledException or IOException or ObjectDisposedException)
        {
            // It was closed meanwhile.
        }
    }
}
