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

    /// <summary>Notes on the disk what is to take its place, so that a later run can complete it if this one is killed.</summary>
    /// <param name="save">The promise of the notebooks and records that go with it; null where it goes alone.</param>
    void Promise(string? save);

    /// <summary>Puts it in its place.</summary>
    void Publish();

    /// <summary>What an earlier run had left and what was done about it, a sentence each.</summary>
    IReadOnlyList<string> Found { get; }

    /// <summary>Where it is, in a sentence.</summary>
    string Says { get; }
}
