using EightOhm.Cli.Ends;
using EightOhm.Cli.Notebooks;
using EightOhm.Display.Tables;

namespace EightOhm.Cli.Book;

/// <summary>What the book tells.</summary>
/// <param name="Design">The design's name.</param>
/// <param name="Notebooks">The notebooks, with their outputs.</param>
/// <param name="Sheet">How the requirements stand, failures first.</param>
/// <param name="Tally">The same in one sentence.</param>
/// <param name="Set">What is set from outside, one sentence a value.</param>
/// <param name="Banner">The sentence at the top of every page; empty for the design as it is kept.</param>
/// <param name="Moved">What moved with what was set: a table each for inputs, requirements and results that differ; null when nothing was set.</param>
/// <param name="Log">The cells that gave nothing.</param>
/// <param name="Records">The names of the record files in the folder.</param>
internal sealed record BookContent(
    string Design,
    IReadOnlyList<NotebookFile> Notebooks,
    Table Sheet,
    string Tally,
    IReadOnlyList<string> Set,
    string Banner,
    IReadOnlyList<Table>? Moved,
    RunLog Log,
    IReadOnlyList<string> Records);
