namespace EightOhm.Cli.Running;

/// <summary>Keeps one kernel ahead: while a notebook runs, the next one's kernel starts in the background.</summary>
internal sealed class KernelQueue : IDisposable
{
    private Task<NotebookKernel>? next = Start();

    /// <summary>A fresh kernel.</summary>
    /// <param name="more">Whether another will be wanted after it.</param>
    /// <param name="cancellation">Stops the waiting at once.</param>
    public async Task<NotebookKernel> TakeAsync(bool more, CancellationToken cancellation)
    {
        var kernel = await (next ?? Start()).WaitAsync(cancellation);
        next = more ? Start() : null;
        return kernel;
    }

    /// <summary>Gives up a kernel that nobody took, once it has started; nobody waits for that.</summary>
    public void Dispose() => next?.ContinueWith(started => started.Result.Dispose(), TaskContinuationOptions.OnlyOnRanToCompletion);

    private static Task<NotebookKernel> Start() => Task.Run(NotebookKernel.StartAsync);
}
