using System.Text.Json;
using Microsoft.Playwright;

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>
/// Gives a notebook's page a session whose kernel never speaks. Jupyter cannot open a notebook without one, and a real kernel,
/// which a notebook that is only looked at never uses, takes seconds to start.
/// </summary>
internal static class NoKernel
{
    private static readonly string Kernel = JsonSerializer.Serialize(new { id = "0", name = ".net-csharp", last_activity = DateTime.UnixEpoch, execution_state = "idle", connections = 0 });

    /// <summary>Answers what the page asks about sessions and kernels, before it is opened.</summary>
    public static async Task For(IPage page)
    {
        await page.RouteAsync("**/api/sessions**", route => route.Request.Method == "DELETE"
            ? route.FulfillAsync(new() { Status = 204 })
            : route.FulfillAsync(new() { Status = 201, ContentType = "application/json", Body = $$"""{"id":"0","path":"","name":"","type":"notebook","kernel":{{Kernel}}}""" }));
        await page.RouteAsync("**/api/kernels/**", route => route.FulfillAsync(new() { ContentType = "application/json", Body = Kernel }));
        await page.RouteWebSocketAsync("**/api/kernels/**", _ => { });
    }
}
