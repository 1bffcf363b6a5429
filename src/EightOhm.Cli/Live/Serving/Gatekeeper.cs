using Microsoft.AspNetCore.Http;

namespace EightOhm.Cli.Live.Serving;

/// <summary>Refuses whatever does not come from the page itself: another name for this machine, a page from elsewhere, another way to ask.</summary>
/// <param name="pages">The files of the page.</param>
internal sealed class Gatekeeper(PageFiles pages)
{
    /// <summary>Where the page speaks with the server.</summary>
    public const string Socket = "/socket";

    private const string Policy =
        "default-src 'none'; script-src 'self'; font-src 'self'; connect-src 'self'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    /// <summary>Looks at every request before anything else does.</summary>
    /// <param name="context">The request.</param>
    /// <param name="speak">Goes on with a socket.</param>
    public async Task LookAsync(HttpContext context, Func<HttpContext, Task> speak)
    {
        var (request, response) = (context.Request, context.Response);
        var port = context.Connection.LocalPort;
        foreach (var (name, value) in Headers)
            response.Headers[name] = value;

        // A name that a page from elsewhere had turned to this machine would be in its Host.
        if (!IsOurs(request.Headers.Host, port, ""))
            response.StatusCode = StatusCodes.Status421MisdirectedRequest;
        else if (request.Headers.Origin.Count > 0 && !IsOurs(request.Headers.Origin, port, "http://"))
            response.StatusCode = StatusCodes.Status403Forbidden;
        else if (request.Headers["Sec-Fetch-Site"] is { Count: > 0 } site && site != "same-origin" && site != "none")
            response.StatusCode = StatusCodes.Status403Forbidden;
        else if (!HttpMethods.IsGet(request.Method))
            response.StatusCode = StatusCodes.Status405MethodNotAllowed;
        else if (request.Path == Socket && context.WebSockets.IsWebSocketRequest)
            await SpeakAsync(context, speak);
        else if (pages.Find(request.Path.Value ?? "") is { } file)
            await SendAsync(response, file);
        else
            response.StatusCode = StatusCodes.Status404NotFound;
    }

    private static readonly IReadOnlyList<(string Name, string Value)> Headers =
    [
        ("Content-Security-Policy", Policy),
        ("X-Content-Type-Options", "nosniff"),
        ("X-Frame-Options", "DENY"),
        ("Referrer-Policy", "no-referrer"),
        ("Cross-Origin-Resource-Policy", "same-origin"),
        ("Cross-Origin-Opener-Policy", "same-origin"),
        ("Cache-Control", "no-store"),
    ];

    private static bool IsOurs(Microsoft.Extensions.Primitives.StringValues values, int port, string before) =>
        values.Count == 1 && (values[0] == FormattableString.Invariant($"{before}127.0.0.1:{port}") || values[0] == FormattableString.Invariant($"{before}localhost:{port}"));

    // A browser always says from which page a socket is asked for.
    private static Task SpeakAsync(HttpContext context, Func<HttpContext, Task> speak)
    {
        if (context.Request.Headers.Origin.Count > 0)
            return speak(context);
        context.Response.StatusCode = StatusCodes.Status403Forbidden;
        return Task.CompletedTask;
    }

    private static async Task SendAsync(HttpResponse response, PageFile file)
    {
        response.ContentType = file.Type;
        response.ContentLength = file.Bytes.Length;
        await response.Body.WriteAsync(file.Bytes);
    }
}
