using EightOhm.Cli.Book;

namespace EightOhm.Cli.Output;

/// <summary>The book as a folder of pages.</summary>
/// <param name="folder">The folder.</param>
internal sealed class BookPages(OutFolder folder) : IPublication
{
    public string New => folder.New;

    public string Says => $"The book is at {Path.GetRelativePath(Environment.CurrentDirectory, folder.IndexPath)}";

    public Task MakeAsync(BookContent book, CancellationToken cancellation)
    {
        new BookWriter(New).Write(book);
        return Task.CompletedTask;
    }

    public void CheckOwn() => folder.CheckOwn();

    public void Promise(string? save) => folder.Promise(save);

    public IReadOnlyList<string> Found => folder.Found;

    public void Publish() => folder.Publish();

    public void Dispose() => folder.Dispose();
}
