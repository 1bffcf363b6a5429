namespace EightOhm.Record;

/// <summary>How long a record waits for one of its rules: a solver that never comes to an end must not keep a file from opening.</summary>
/// <param name="most">The longest time for one rule. Far more than any rule takes: what ends by it has no answer on any machine.</param>
internal sealed class Patience(TimeSpan most) : IDisposable
{
    private CancellationTokenSource _end = new();
    private IDisposable? _work;

    /// <summary>What a record has.</summary>
    public static TimeSpan Usual { get; } = TimeSpan.FromSeconds(20);

    /// <summary>Runs a rule.</summary>
    /// <exception cref="InvalidOperationException">It took longer.</exception>
    /// <exception cref="OperationCanceledException">The work around it was stopped.</exception>
    public T Run<T>(Func<T> rule)
    {
        if (_end.IsCancellationRequested)
            Renew();
        _work ??= Work.BeginWithin(_end.Token);
        _end.CancelAfter(most);
        try
        {
            return rule();
        }
        catch (OperationCanceledException) when (_end.IsCancellationRequested)
        {
            Renew();
            throw new InvalidOperationException(FormattableString.Invariant($"it is not worked out after {most.TotalSeconds:0.##} s; one of its inputs is far from anything that is built."));
        }
    }

    /// <summary>Ends it.</summary>
    public void Dispose()
    {
        _work?.Dispose();
        _end.Dispose();
    }

    private void Renew()
    {
        Dispose();
        (_end, _work) = (new(), null);
    }
}
