using System.Linq.Expressions;

namespace EightOhm.Record;

/// <summary>The names by which a file says as what a rule takes an entry.</summary>
internal static class RuleSources
{
    private const string Part = "part";

    public static string NameOf(Type type) => type == PartFiles.DeviceType ? Part : KindNames.Name(type)!;

    public static Type? Find(string name) => name == Part ? PartFiles.DeviceType : KindNames.Find(name)?.Type;

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
