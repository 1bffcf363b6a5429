using System.Reactive.Subjects;
using System.Runtime.CompilerServices;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Events;

namespace EightOhm.Notebook;

/// <summary>Tells what happens in a cell otherwise than the host does, before anybody hears of it; disposing it gives the host the word again.</summary>
/// <remarks>The host offers no way between its kernels and its listeners. It is archived and pinned by exact version, so its field stays as it is.</remarks>
internal sealed class Retelling : IDisposable
{
    private readonly KernelInvocationContext _context;
    private readonly ReplaySubject<KernelEvent> _host;
    private readonly IDisposable _heard;

    /// <param name="context">The running command.</param>
    /// <param name="tell">What is told in place of an event; the event itself where nothing is to change.</param>
    public Retelling(KernelInvocationContext context, Func<KernelEvent, IEnumerable<KernelEvent>> tell)
    {
        _context = context;
        _host = Events(context);
        var own = new ReplaySubject<KernelEvent>();
        _heard = own.Subscribe(new Teller(_host, tell));
        Events(context) = own;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        Events(_context) = _host;
        _heard.Dispose();
    }

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_events")]
    private static extern ref ReplaySubject<KernelEvent> Events(KernelInvocationContext context);

    private sealed class Teller(ReplaySubject<KernelEvent> host, Func<KernelEvent, IEnumerable<KernelEvent>> tell) : IObserver<KernelEvent>
    {
        public void OnCompleted() => host.OnCompleted();

        public void OnError(Exception error) => host.OnError(error);

        public void OnNext(KernelEvent value)
        {
            foreach (var told in tell(value))
                host.OnNext(told);
        }
    }
}
