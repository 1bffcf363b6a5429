using System.Reflection;
using Xunit.Abstractions;
using Xunit.Sdk;

namespace EightOhm.Tests.House;

/// <summary>
/// Gives the tests of an assembly, and all programs that they start, a temporary folder of their own, and removes it after the last of them, while the run still
/// waits: nothing is left on the disk, whoever was killed.
/// </summary>
/// <remarks>The end of the process would be too late: the runner ends a test host a tenth of a second after its last result, and a cache of packages takes longer.</remarks>
internal sealed class OwnTemporaryFolder : XunitTestFramework
{
    private static readonly string Variable = OperatingSystem.IsWindows() ? "TMP" : "TMPDIR";
    private static readonly string? Outer = Environment.GetEnvironmentVariable(Variable);

    // A short name: sockets lie below it, and their paths may have little more than a hundred letters.
    private static readonly string Folder = Directory.CreateTempSubdirectory("ohm-").FullName;

    static OwnTemporaryFolder()
    {
        Environment.SetEnvironmentVariable(Variable, Folder);
        // Where tests are only listed, and none is the last.
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Remove();
    }

    public OwnTemporaryFolder(IMessageSink diagnostics) : base(diagnostics)
    {
    }

    protected override ITestFrameworkExecutor CreateExecutor(AssemblyName assemblyName) => new Executor(assemblyName, SourceInformationProvider, DiagnosticMessageSink);

    private static void Remove()
    {
        Environment.SetEnvironmentVariable(Variable, Outer);
        if (Directory.Exists(Folder))
            Directory.Delete(Folder, recursive: true);
    }

    private sealed class Executor(AssemblyName assembly, ISourceInformationProvider sources, IMessageSink diagnostics) : XunitTestFrameworkExecutor(assembly, sources, diagnostics)
    {
        // As what it overrides: the run ends with the message that the runner sends.
        protected override async void RunTestCases(IEnumerable<IXunitTestCase> testCases, IMessageSink executionMessageSink, ITestFrameworkExecutionOptions executionOptions)
        {
            using var runner = new Runner(TestAssembly, testCases, DiagnosticMessageSink, executionMessageSink, executionOptions);
            await runner.RunAsync();
        }
    }

    private sealed class Runner(ITestAssembly assembly, IEnumerable<IXunitTestCase> cases, IMessageSink diagnostics, IMessageSink results, ITestFrameworkExecutionOptions options)
        : XunitTestAssemblyRunner(assembly, cases, diagnostics, results, options)
    {
        protected override async Task BeforeTestAssemblyFinishedAsync()
        {
            Aggregator.Run(Remove);
            await base.BeforeTestAssemblyFinishedAsync();
        }
    }
}
