using System.Diagnostics;
using EightOhm.Tests.Saver;

namespace EightOhm.Tests.Record;

/// <summary>The saver in a process of its own.</summary>
internal static class SaverProcess
{
    public static Process Start(params string[] arguments) => Start(null, arguments);

    /// <summary>The same with one more setting in its environment, written NAME=value.</summary>
    public static Process Start(string? setting, string[] arguments)
    {
        var start = new ProcessStartInfo(Environment.GetEnvironmentVariable("DOTNET_HOST_PATH") ?? "dotnet")
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        if (setting?.Split('=') is [var name, var value])
            start.Environment[name] = value;
        start.ArgumentList.Add("exec");
        start.ArgumentList.Add(typeof(NumberedState).Assembly.Location);
        foreach (var argument in arguments)
            start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }
}
