using System.Globalization;
using EightOhm.Cli;

// What cells print and what the compiler says must read the same on every machine.
CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.DefaultThreadCurrentUICulture = CultureInfo.InvariantCulture;

var code = await CommandLine.InvokeAsync(args, Console.Out, Console.Error, live: !Console.IsOutputRedirected);

// A cell over its limit is still running and cannot be stopped; the process must not wait for it.
Environment.Exit(code);
