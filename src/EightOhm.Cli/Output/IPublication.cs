using EightOhm.Cli.Book;

namespace EightOhm.Cli.Output;

/// <summary>What a run makes of its notebooks: made aside, and put in its place at the very end.</summary>
internal interface IPublication : IDisposable
{
    /// <summary>The folder in which it is made.</summary>
    string New { get; }

    /// <summary>Makes it whole in <see cref="New"/>.</summary>
    Task MakeAsync(BookContent book, CancellationToken cancellation);

    /// <summary>Refuses, before any file is moved, to write over one that is not ours.</summary>
    void CheckOwn();

    /// <summary>Puts it in its place.</summary>
    void Publish();

    /// <summary>Where it is, in a sentence.</summary>
    string Says { get; }
}
