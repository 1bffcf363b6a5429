using System.Collections.Concurrent;
using System.Linq.Expressions;
using System.Reflection;
using System.Runtime.ExceptionServices;

namespace EightOhm.Explaining;

/// <summary>A formula's lines as expression trees: each local, then the result. Made only when somebody asks.</summary>
public sealed class Board
{
    private static readonly ConcurrentDictionary<MemberInfo, Board?> Known = new();

    /// <summary>Used by the generated code.</summary>
    /// <param name="parameters">The formula's parameter names.</param>
    /// <param name="lines">Its lines; the last one is the result.</param>
    public Board(string[] parameters, params BoardLine[] lines)
    {
        Parameters = parameters;
        Lines = lines;
    }

    /// <summary>The formula's parameter names.</summary>
    public IReadOnlyList<string> Parameters { get; }

    /// <summary>Its lines; the last one is the result.</summary>
    public IReadOnlyList<BoardLine> Lines { get; }

    /// <summary>Used by the generated code.</summary>
    /// <param name="name">The local's name; empty for the result.</param>
    /// <param name="rule">Its expression over the object, the parameters and the locals before it.</param>
    public static BoardLine Line(string name, LambdaExpression rule) => new(name, rule);

    /// <summary>The board of a formula, or null when the member is none.</summary>
    /// <param name="member">A method or property.</param>
    public static Board? Of(MemberInfo member)
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

    /// <summary>Computes the formula line by line: the values of the locals, then the result.</summary>
    /// <param name="arguments">The object, if the formula is an instance member, then the parameters.</param>
    public IReadOnlyList<object> Compute(params object[] arguments)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        var known = arguments.ToList();
        foreach (var line in Lines)
            known.Add(line.Value(known));
        return known[arguments.Length..];
    }

    private static Board? Find(MemberInfo member)
    {
        if (member.GetCustomAttribute<FormulaAttribute>() is null)
            return null;
        var types = member is MethodInfo method ? method.GetParameters().Select(p => p.ParameterType).ToArray() : [];
        var maker = member.DeclaringType!
            .GetMethods(BindingFlags.NonPublic | BindingFlags.Static)
            .Single(m => m.GetCustomAttribute<BoardOfAttribute>() is { } of && of.Member == member.Name && of.Parameters.SequenceEqual(types));
        return (Board)maker.Invoke(null, null)!;
    }
}

/// <summary>One line of a board.</summary>
/// <param name="Name">The local's name; empty for the result.</param>
/// <param name="Rule">Its expression.</param>
public sealed record BoardLine(string Name, LambdaExpression Rule)
{
    private Delegate? _compiled;

    internal object Value(IEnumerable<object> known)
    {
        _compiled ??= Rule.Compile();
        try
        {
            return _compiled.DynamicInvoke([.. known.Take(Rule.Parameters.Count)])!;
        }
        catch (TargetInvocationException wrapped) when (wrapped.InnerException is { } cause)
        {
            // The reader wants the refusal itself, not that a delegate threw it.
            ExceptionDispatchInfo.Throw(cause);
            throw;
        }
    }
}
