using System.Reflection;

namespace EightOhm.Published.Machine;

/// <summary>Marks a class whose facts are checks that go into the ledger.</summary>
[AttributeUsage(AttributeTargets.Class)]
internal sealed class ChecksAttribute : Attribute;

/// <summary>Collects what the checks find.</summary>
internal static class Ledger
{
    // Checks are synchronous, so the thread knows whose ledger it writes.
    [ThreadStatic]
    private static List<Entry>? current;

    public static void Note(Entry entry) => current?.Add(entry);

    /// <summary>Runs every check of this project, in the order of their names, and gives what they noted.</summary>
    /// <remarks>The ledger runs the checks itself, so that it is whole and the same whichever tests a run selects and in whatever order.</remarks>
    public static IReadOnlyList<Entry> Collect() => Collect(typeof(Ledger).Assembly.GetTypes().Where(t => t.IsDefined(typeof(ChecksAttribute))));

    internal static IReadOnlyList<Entry> Collect(IEnumerable<Type> classes)
    {
        var before = current;
        current = [];
        try
        {
            foreach (var type in classes.OrderBy(t => t.FullName, StringComparer.Ordinal))
            {
                foreach (var check in type.GetMethods().Where(m => m.IsDefined(typeof(FactAttribute))).OrderBy(m => m.Name, StringComparer.Ordinal))
                    Run(type, check);
            }

            return [.. current
                .OrderBy(e => e.Functions.Count > 0 ? e.Functions[0] : "", StringComparer.Ordinal)
                .ThenBy(e => e.Verdict)
                .ThenBy(e => e.Source, StringComparer.Ordinal)
                .ThenBy(e => e.Printed, StringComparer.Ordinal)
                .ThenBy(e => e.Note, StringComparer.Ordinal)];
        }
        finally
        {
            current = before;
        }
    }

    private static void Run(Type type, MethodInfo check)
    {
        try
        {
            check.Invoke(Activator.CreateInstance(type), null);
        }
        catch (TargetInvocationException thrown)
        {
            Note(new Entry([], $"{type.Name}.{check.Name}", "", "", "", Verdict.Failed, thrown.InnerException!.Message, ""));
        }
    }
}
