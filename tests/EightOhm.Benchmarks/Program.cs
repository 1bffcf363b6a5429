using BenchmarkDotNet.Running;
using EightOhm.Benchmarks;

// The live sheet is a program with a person before it: its answers are taken as they come, not in loops of their own.
if (args is ["live", var program, var design])
    await new LiveLatencies(program, design).RunAsync();
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
