using System.Diagnostics;
using System.Reflection;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Display;

/// <summary>What an exception means to a person: a design without an answer or code that is wrong, in its own words.</summary>
public static class FailureWords
{
    /// <summary>The exception that says something: wrappers around it say nothing that a person could use.</summary>
    /// <param name="exception">What was thrown.</param>
    /// <returns>The innermost exception that says more than its wrapper; itself if it wraps none.</returns>
    public static Exception Innermost(Exception exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        while (exception is TargetInvocationException or TypeInitializationException or AggregateException { InnerExceptions.Count: 1 }
               && exception.InnerException is { } inner)
        {
            exception = inner;
        }

        return exception;
    }

    /// <summary>Whether the library refused a value or found none: the numbers of the design have no answer, the code is not wrong.</summary>
    /// <param name="exception">What was thrown, without its wrappers.</param>
    /// <returns>True where the numbers are to be changed, false where the code is.</returns>
    public static bool IsWithoutAnswer(Exception exception) => exception switch
    {
        ShortfallException or RefusedValueException => true,
        RecordException { IsWithoutAnswer: true } => true,
        // Nobody can tell the worst of a rule: what the rule met tells whether the numbers or the code are to blame.
        RecordException { InnerException: { } met } => IsWithoutAnswer(met),
        ArgumentOutOfRangeException => IsOurs(exception),
        _ => false,
    };

    /// <summary>The sentence of an exception, with the type's name only where the sentence alone would not be understood.</summary>
    /// <param name="exception">What was thrown, without its wrappers.</param>
    /// <returns>The sentence.</returns>
    public static string Of(Exception exception)
    {
        ArgumentNullException.ThrowIfNull(exception);
        // The framework's tail only repeats what the sentence names.
        if (exception is ArgumentException { ParamName: { } name } && exception.Message.EndsWith($" (Parameter '{name}')", StringComparison.Ordinal) && exception.Message.IndexOf(name, StringComparison.Ordinal) < exception.Message.LastIndexOf('('))
            return exception.Message[..exception.Message.LastIndexOf(" (", StringComparison.Ordinal)];
        return IsWithoutAnswer(exception) || exception is ArgumentException or InvalidOperationException or IOException or FormatException or NotSupportedException
            ? exception.Message
            : $"{exception.GetType().Name}: {exception.Message}";
    }

    // The framework's helpers throw for us; the first frame that is not the framework's tells who refused.
    private static bool IsOurs(Exception exception) =>
        new StackTrace(exception).GetFrames()
            .Select(f => f.GetMethod()?.DeclaringType?.Assembly.GetName().Name)
            .FirstOrDefault(name => name is not null && !name.StartsWith("System.", StringComparison.Ordinal))
            is { } first && (first == "EightOhm" || first.StartsWith("EightOhm.", StringComparison.Ordinal));
}
