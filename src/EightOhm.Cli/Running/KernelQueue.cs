namespace EightOhm.Cli.Running;

/// <summary>Keeps one kernel ahead: while a notebook runs, the next one's kernel starts in the background.</summary>
internal sealed class KernelQueue
{
    private Task<NotebookKernel> next = Start();

    /// <summary>A fresh kernel.</summary>
    /// <param name="more">Whether another will be wanted after it.</param>
    public async Task<NotebookKernel> TakeAsync(bool more)
    {
        var kernel = await next;
        if (more)
            next = Start();
        return kernel;
    }

    private static Task<NotebookKernel> Start() => Task.Run(NotebookKernel.StartAsync);
}
