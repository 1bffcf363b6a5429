using EightOhm.Cli.Notebooks;

namespace EightOhm.Cli.WhatIf;

/// <summary>Whether the outputs that the notebooks hold are those of their code, of this EightOhm and of the record as it is kept.</summary>
internal static class KeptOutputs
{
    /// <summary>Why they cannot be relied on, as the end of a sentence; null when they can.</summary>
    public static string? Fault(RecordCopy copy) =>
        copy.Home.Notebooks.Select(notebook => Fault(copy, notebook)).FirstOrDefault(fault => fault is not null);

    /// <summary>The same of one notebook.</summary>
    public static string? Fault(RecordCopy copy, NotebookFile notebook)
    {
        if (!notebook.Cells.Any(c => c.IsCode))
            return null;
        if (notebook.Stamp is not { } kept)
            return $"{notebook.FileLabel} holds no outputs of a run with --save in which every cell had its answer";
        var now = NotebookStamp.Of(notebook, FilesRead.Fingerprint(notebook, copy.HomeFiles));
        if (kept.Code != now.Code)
            return $"the code of {notebook.FileLabel}, or EightOhm, is not what its outputs were made with";
        if (kept.Outputs != now.Outputs)
            return $"the outputs of {notebook.FileLabel} were changed since its run";
        return kept.Record != now.Record ? $"the record, or a file that {notebook.FileLabel} reads, was changed since its run" : null;
    }

    /// <summary>Says in each notebook of which run its outputs are.</summary>
    /// <param name="copy">The notebooks' records.</param>
    /// <param name="areKept">Whether they are those of the design as it is kept, with an answer in every cell.</param>
    public static void Stamp(RecordCopy copy, bool areKept)
    {
        foreach (var notebook in copy.Home.Notebooks)
            notebook.SetStamp(areKept ? NotebookStamp.Of(notebook, FilesRead.Fingerprint(notebook, copy.RunFiles)) : null);
    }
}
