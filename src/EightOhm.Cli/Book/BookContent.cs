using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Cli.Sheets;

namespace EightOhm.Cli.Book;

/// <summary>What the book tells.</summary>
/// <param name="Title">The designs' names, or that of the folder.</param>
/// <param name="Notebooks">The notebooks, with their outputs.</param>
/// <param name="Designs">The designs, each with its sheet.</param>
/// <param name="Set">What is set from outside, one sentence a value.</param>
/// <param name="Banner">The sentence at the top of every page; empty for the design as it is kept.</param>
/// <param name="Symbols">What symbols stand for, those of the records first.</param>
/// <param name="Fingerprint">A short fingerprint of the records as the run left them.</param>
/// <param name="Log">The cells that gave nothing.</param>
internal sealed record BookContent(
    string Title,
    IReadOnlyList<NotebookFile> Notebooks,
    IReadOnlyList<DesignSheet> Designs,
    IReadOnlyList<string> Set,
    string Banner,
    IReadOnlyList<SymbolMeaning> Symbols,
    string Fingerprint,
    RunLog Log);
