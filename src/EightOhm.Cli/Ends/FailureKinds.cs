using System.Diagnostics;
using EightOhm.Quantities;
using EightOhm.Record;

namespace EightOhm.Cli.Ends;

/// <summary>Tells a design without an answer from code that is wrong.</summary>
internal static class FailureKinds
{
    public static FailureKind Of(Exception exception) => exception switch
    {
        OperationCanceledException => FailureKind.Cancelled,
        ShortfallException or RefusedValueException => FailureKind.NoAnswer,
        RecordException { IsWithoutAnswer: true } => FailureKind.NoAnswer,
        // Nobody can tell the worst of a rule: what the rule met tells whether the numbers or the code are to blame.
        RecordException { InnerException: { } met } => Of(met),
        ArgumentOutOfRangeException when IsOurs(exception) => FailureKind.NoAnswer,
        _ => FailureKind.Failed,
    };

    // The framework's helpers throw for us; the first frame that is not the framework's tells who refused.
    private static bool IsOurs(Exception exception) =>
        new StackTrace(exception).GetFrames()
            .Select(f => f.GetMethod()?.DeclaringType?.Assembly.GetName().Name)
            .FirstOrDefault(name => name is not null && !name.StartsWith("System.", StringComparison.Ordinal))
            is { } first && (first == "EightOhm" || first.StartsWith("EightOhm.", StringComparison.Ordinal));
}
