using System.CommandLine;

namespace EightOhm.Cli.Live.Cells;

/// <summary>The process in which cells run, for the program itself: it stands in no help.</summary>
internal sealed class CellsCommand : Command
{
    /// <summary>Its name.</summary>
    public const string Word = "cells";

    public CellsCommand()
        : base(Word, "Runs compiled cells for eightohm open.") => Hidden = true;
}
