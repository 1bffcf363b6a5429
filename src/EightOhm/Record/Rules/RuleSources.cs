using System.Linq.Expressions;
using EightOhm.Devices;

namespace EightOhm.Record;

/// <summary>The names by which a file says as what a rule takes an entry.</summary>
internal static class RuleSources
{
    // A transistor is called so since it was the only part.
    private const string Part = "part";

    public static string NameOf(Type type) => type == CardKinds.First.Type ? Part : CardKinds.Find(type)?.Name ?? KindNames.Name(type)!;

    public static Type? Find(string name) => name == Part ? CardKinds.First.Type : CardKinds.Find(name)?.Type ?? KindNames.Find(name)?.Type;

    /// <summary>A lambda's parameters against the entries that they name.</summary>
    /// <exception cref="RecordException">One takes its entry for another kind.</exception>
    public static void Check(string what, LambdaExpression lambda, Func<string, Slot?> find)
    {
        foreach (var parameter in lambda.Parameters)
        {
            if (find(parameter.Name!) is { } source && source.Type != parameter.Type)
                throw new RecordException($"{what} takes {source.Name} for {KindNames.Of(parameter.Type)}, but the record has it as {source.KindName}. Write ({source.Type.Name} {source.Name}, …) => ….");
        }
    }
}
