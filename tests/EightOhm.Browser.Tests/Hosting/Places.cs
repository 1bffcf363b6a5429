namespace EightOhm.Browser.Tests.Hosting;

/// <summary>How much goes on at once, over all kinds of work: a page or a kernel keeps about one processor busy, and a small machine has two.</summary>
internal static class Places
{
    private static readonly SemaphoreSlim Two = new(2);

    /// <summary>Does a piece of work when there is a place for it.</summary>
    public static async Task<T> Take<T>(Func<Task<T>> work)
    {
        await Two.WaitAsync();
        try
        {
            return await work();
        }
        finally
        {
            Two.Release();
        }
    }
}
