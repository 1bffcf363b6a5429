using System.Globalization;
using EightOhm.Cli;
using EightOhm.Cli.Live;
using EightOhm.Cli.Watching;

// What cells print and what the compiler says must read the same on every machine.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;

Watched.Begin();
if (Watcher.IsFor(args) && await new Watcher(Console.Error).RunAsync(args) is { } watched)
    return watched;

var code = await CommandLine.InvokeAsync(args, Console.Out, Console.Error, live: !Console.IsOutputRedirected, TrustedFolders.OfThisPerson());
Watched.End(code);

// A cell over its limit is still running and cannot be stopped; the process must not wait for it.
Environment.Exit(code);
return code;
