using System.Collections.Concurrent;
using System.Linq.Expressions;
using System.Reflection;

namespace EightOhm.Explaining;

/// <summary>A formula's steps as expression trees: each local, then the result. Made only when somebody asks.</summary>
public sealed class FormulaSteps
{
    private static readonly ConcurrentDictionary<MemberInfo, FormulaSteps?> Known = new();

    /// <summary>Used by the generated code.</summary>
    /// <param name="parameters">The formula's parameter names.</param>
    /// <param name="lines">Its steps; the last one is the result.</param>
    public FormulaSteps(string[] parameters, params FormulaStep[] lines)
    {
        Parameters = parameters;
        Lines = lines;
    }

    /// <summary>The formula's parameter names.</summary>
    public IReadOnlyList<string> Parameters { get; }

    /// <summary>Its steps; the last one is the result.</summary>
    public IReadOnlyList<FormulaStep> Lines { get; }

    /// <summary>Used by the generated code.</summary>
    /// <param name="name">The local's name; empty for the result.</param>
    /// <param name="rule">Its expression over the object, the parameters and the locals before it.</param>
    public static FormulaStep Step(string name, LambdaExpression rule) => new(name, rule);

    /// <summary>The value itself. Written by the build, and by a notebook cell, round a number that the compiler would work into the next one: 1.0/6 stays a quotient.</summary>
    /// <typeparam name="T">The number's type.</typeparam>
    /// <param name="value">The number.</param>
    public static T Kept<T>(T value) => value;

    /// <summary>The value itself, with the name of the constant that it comes from. Written by the build.</summary>
    /// <typeparam name="T">The constant's type.</typeparam>
    /// <param name="name">The constant's name.</param>
    /// <param name="value">Its value.</param>
    public static T Constant<T>(string name, T value) => value;

    /// <summary>What stands in a call of <see cref="Kept"/>: a saved rule keeps its quotients by itself.</summary>
    internal static Expression Unwrapped(Expression e) =>
        e is MethodCallExpression { Method: { Name: nameof(Kept), DeclaringType: var owner } } call && owner == typeof(FormulaSteps) ? call.Arguments[0] : e;

    /// <summary>The steps of a formula, or null when the member is none.</summary>
    /// <param name="member">A method or property.</param>
    /// <exception cref="InvalidOperationException">It is marked as a formula, but its steps were not written when its program was built.</exception>
    public static FormulaSteps? Of(MemberInfo member)
    {
        ArgumentNullException.ThrowIfNull(member);
        return Known.GetOrAdd(member, Find);
    }

    /// <summary>Every formula of an assembly.</summary>
    /// <param name="assembly">The assembly.</param>
    public static IEnumerable<MemberInfo> FormulasOf(Assembly assembly)
    {
        ArgumentNullException.ThrowIfNull(assembly);
        return assembly.GetTypes()
            .SelectMany(t => t.GetMembers(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(m => m.GetCustomAttribute<FormulaAttribute>() is not null);
    }

    /// <summary>Computes the formula step by step: the values of the locals, then the result.</summary>
    /// <param name="arguments">The object, if the formula is an instance member, then the parameters.</param>
    public IReadOnlyList<object> Compute(params object[] arguments)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        var known = arguments.ToList();
        foreach (var line in Lines)
            known.Add(line.Value(known));
        return known[arguments.Length..];
    }

    private static FormulaSteps? Find(MemberInfo member)
    {
        if (member.GetCustomAttribute<FormulaAttribute>() is null)
            return null;
        var types = member is MethodInfo method ? method.GetParameters().Select(p => p.ParameterType).ToArray() : [];
        var maker = member.DeclaringType!
            .GetMethods(BindingFlags.NonPublic | BindingFlags.Static)
            .SingleOrDefault(m => m.GetCustomAttribute<StepsOfAttribute>() is { } of && of.Member == member.Name && of.Parameters.SequenceEqual(types))
            ?? throw new InvalidOperationException(
                $"{member.DeclaringType.Name}.{member.Name} is marked [Formula], but its steps were not written when {member.DeclaringType.Assembly.GetName().Name} was built, so they cannot be shown. "
                + "Let that project refer to the package EightOhm itself (its generator comes with it) and build again; in a notebook cell it must stand in a partial type: public static partial class Mine { … }.");
        return (FormulaSteps)maker.Invoke(null, null)!;
    }
}
