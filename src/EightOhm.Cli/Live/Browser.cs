using System.ComponentModel;
using System.Diagnostics;

namespace EightOhm.Cli.Live;

/// <summary>The person's own browser.</summary>
internal static class Browser
{
    /// <summary>Opens an address where there is a browser; where there is none, the address was printed.</summary>
    public static void Open(string address)
    {
        // Without a screen there is nothing to open it on, and a browser for text would take the terminal.
        if (OperatingSystem.IsLinux() && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("DISPLAY")) && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("WAYLAND_DISPLAY")))
            return;
        try
        {
            using var started = OperatingSystem.IsWindows() ? Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })
                : Process.Start(new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address]) { RedirectStandardOutput = true, RedirectStandardError = true });
        }
        catch (Exception e) when (e is Win32Exception or IOException or InvalidOperationException)
        {
            // The address stands on the terminal.
        }
    }
}
