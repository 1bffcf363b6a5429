using System.Reflection;
using System.Runtime.CompilerServices;
using EightOhm.Quantities;

namespace EightOhm.Record;

/// <summary>Finds what a lambda uses beside its parameters, by reading its code and that of every method of the program that it calls.</summary>
/// <remarks>Only what can be followed is let through: a variable of the program is a source that the record cannot see move. Code of the framework, of
/// EightOhm and of its libraries is not read; what it holds does not belong to the design.</remarks>
internal static class Captures
{
    private static readonly Assembly[] Ours = [typeof(Captures).Assembly, typeof(UnitsNet.IQuantity).Assembly, typeof(MathNet.Numerics.SpecialFunctions).Assembly];

    /// <summary>A sentence that names the culprit, or null when the lambda uses its parameters alone.</summary>
    public static string? Find(Delegate lambda)
    {
        if (lambda.GetInvocationList().Length > 1)
            return "several lambdas were put together; give one.";
        var seen = new HashSet<MethodBase>();
        var made = new HashSet<Type>();
        var waiting = new Queue<MethodBase>([lambda.Method]);
        var used = new List<FieldInfo>();
        while (waiting.TryDequeue(out var method))
        {
            if (!seen.Add(method))
                continue;
            if (CodeReader.Read(method) is not { } code)
                return $"{Name(method)} cannot be read, so that nobody knows what it uses. Call it in the cell and give its result to an entry.";
            foreach (var member in code)
            {
                switch (member)
                {
                    case FieldInfo field when !IsTrusted(field.DeclaringType!):
                        used.Add(field);
                        break;
                    case ConstructorInfo constructor when !IsTrusted(constructor.DeclaringType!):
                        made.Add(constructor.DeclaringType!);
                        waiting.Enqueue(constructor);
                        break;
                    case MethodBase called when called.DeclaringType == typeof(DesignRecord):
                        return "the record is read inside the lambda, where nobody sees what hangs on what; name the entries as parameters.";
                    case MethodInfo { IsAbstract: true } called when !IsTrusted(called.DeclaringType!):
                        return $"{Name(called)} may be any code, so that nobody knows what it uses. Call a method that can be read.";
                    case MethodBase called when !IsTrusted(called.DeclaringType!):
                        waiting.Enqueue(called);
                        break;
                }
            }
        }

        return used.FirstOrDefault(f => IsForeign(f, lambda.Target, made)) is { } culprit
            ? $"{Plain(culprit.Name)} is a variable from outside the lambda, and the record could not know that it moved. Make it an entry (Target, Choose or Assume) and a parameter: ({Word(culprit.FieldType)} {Plain(culprit.Name)}, …) => …."
            : null;
    }

    // A static field, a field of the object that the lambda belongs to, and a field of an object that the code did not make itself. A structure is
    // always made in the code or read out of one of those.
    private static bool IsForeign(FieldInfo field, object? target, HashSet<Type> made) => !IsHidden(field)
        && (field.IsStatic || field.DeclaringType == target?.GetType() || (!field.DeclaringType!.IsValueType && !made.Contains(field.DeclaringType)));

    // What the compiler keeps for itself: cached lambdas, and the way to the variables of an outer scope, which are looked at themselves.
    private static bool IsHidden(FieldInfo field) =>
        (field.IsStatic && field.DeclaringType!.IsDefined(typeof(CompilerGeneratedAttribute)))
        || (field.Name.StartsWith('<') && !field.Name.EndsWith("k__BackingField", StringComparison.Ordinal))
        || field.Name.StartsWith("CS$", StringComparison.Ordinal);

    private static bool IsTrusted(Type type)
    {
        var assembly = type.Assembly;
        return type.IsAssignableTo(typeof(Delegate)) || Array.IndexOf(Ours, assembly) >= 0
            || (assembly.GetName().Name is { } name && (name == "EightOhm.Display" || name.StartsWith("System", StringComparison.Ordinal) || name is "mscorlib" or "netstandard"));
    }

    // <P>k__BackingField → P; <>4__this → this
    private static string Plain(string name) =>
        name.StartsWith('<') && name.IndexOf('>', StringComparison.Ordinal) is > 1 and var end ? name[1..end] : name == "<>4__this" ? "this" : name;

    private static string Word(Type type) => QuantityKinds.Find(type) is { } kind ? kind.Name : type.Name;

    private static string Name(MethodBase method) => method.DeclaringType is { } owner ? $"{owner.Name}.{Plain(method.Name)}" : "a function made at run time";
}
