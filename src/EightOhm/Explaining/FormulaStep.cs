using System.Linq.Expressions;
using System.Reflection;
using System.Runtime.ExceptionServices;

namespace EightOhm.Explaining;

/// <summary>One step of a formula.</summary>
/// <param name="Name">The local's name; empty for the result.</param>
/// <param name="Rule">Its expression.</param>
public sealed record FormulaStep(string Name, LambdaExpression Rule)
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
