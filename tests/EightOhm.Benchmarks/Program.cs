using System.Globalization;
using BenchmarkDotNet.Running;
using EightOhm.Benchmarks;

// The live sheet is a program with a person before it: its answers are taken as they come, not in loops of their own.
if (args is ["live", var program, var design])
    await new LiveLatencies(program, design).RunAsync();
else if (args is ["live-moves", var tool, var folder, .. var rest])
    await new LiveMoves(tool, folder).RunAsync(rest is [var every] ? int.Parse(every, CultureInfo.InvariantCulture) : 1);
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
