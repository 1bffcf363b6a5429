using System.Net;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>A folder served on loopback, as any plain web server would.</summary>
internal sealed class FolderServer : IDisposable
{
    private readonly HttpListener listener;
    private readonly string folder;

    public FolderServer(string folder)
    {
        this.folder = Path.GetFullPath(folder);
        (listener, Address) = Listen();
        _ = Serve();
    }

    public Uri Address { get; }

    public void Dispose() => listener.Close();

    private async Task Serve()
    {
        while (listener.IsListening)
        {
            HttpListenerContext asked;
            try
            {
                asked = await listener.GetContextAsync();
            }
            catch (Exception ended) when (ended is HttpListenerException or ObjectDisposedException)
            {
                return;
            }
            try
            {
                Answer(asked);
            }
            catch (HttpListenerException)
            {
                // The browser went away.
            }
        }
    }

    private void Answer(HttpListenerContext asked)
    {
        var path = Path.GetFullPath(Path.Combine(folder, Uri.UnescapeDataString(asked.Request.Url!.AbsolutePath).TrimStart('/')));
        if (Directory.Exists(path))
            path = Path.Combine(path, "index.html");
        using var answer = asked.Response;
        if (!path.StartsWith(folder, StringComparison.Ordinal) || !File.Exists(path))
        {
            // A browser asks for an icon by itself: to have none is no error.
            answer.StatusCode = asked.Request.Url.AbsolutePath == "/favicon.ico" ? 204 : 404;
            return;
        }
        answer.ContentType = Path.GetExtension(path) switch
        {
            ".html" => "text/html; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".css" => "text/css; charset=utf-8",
            ".svg" => "image/svg+xml",
            ".json" => "application/json",
            ".woff2" => "font/woff2",
            ".ttf" => "font/ttf",
            _ => "application/octet-stream",
        };
        using var file = File.OpenRead(path);
        answer.ContentLength64 = file.Length;
        file.CopyTo(answer.OutputStream);
    }

    // The listener cannot choose a free port itself: try until one is free.
    private static (HttpListener Listener, Uri Address) Listen()
    {
        for (var attempt = 0; ; attempt++)
        {
            var address = new Uri($"http://127.0.0.1:{Random.Shared.Next(20_000, 60_000)}/");
            var listener = new HttpListener();
            listener.Prefixes.Add(address.AbsoluteUri);
            try
            {
                listener.Start();
                return (listener, address);
            }
            catch (HttpListenerException) when (attempt < 20)
            {
                listener.Close();
            }
        }
    }
}
