using System.Reflection;

namespace EightOhm.Cli.Tests;

/// <summary>The tool outlives the notebook kernel, which its makers have archived.</summary>
public sealed class IndependenceTests
{
    private const string Archived = "Microsoft.DotNet.Interactive";

    [Fact]
    public void Neither_the_tool_nor_what_it_stands_on_asks_for_the_archived_packages()
    {
        var seen = new Dictionary<string, string>(StringComparer.Ordinal);
        var next = new Queue<Assembly>([typeof(CommandLine).Assembly]);
        while (next.TryDequeue(out var assembly))
        {
            foreach (var name in assembly.GetReferencedAssemblies().Where(n => seen.TryAdd(n.Name!, assembly.GetName().Name!)))
            {
                Assert.False(name.Name!.StartsWith(Archived, StringComparison.Ordinal), $"{seen[name.Name]} refers to {name.Name}.");
                if (File.Exists(Path.Combine(AppContext.BaseDirectory, name.Name + ".dll")))
                    next.Enqueue(Assembly.Load(name));
            }
        }

        // Those that matter were looked at.
        Assert.All(["EightOhm", "EightOhm.Display", "EightOhm.Cells", "Microsoft.CodeAnalysis.CSharp", "System.CommandLine"], name => Assert.Contains(name, seen.Keys));
    }
}
