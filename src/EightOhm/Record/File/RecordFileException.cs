namespace EightOhm.Record;

/// <summary>A record file that cannot be read: damaged, changed by hand into something unknown, or written by a newer EightOhm. The file is left as it is.</summary>
public sealed class RecordFileException : IOException
{
    /// <summary>Makes the exception.</summary>
    /// <param name="file">The file's full path.</param>
    /// <param name="line">The line, counted from 1.</param>
    /// <param name="reason">What is wrong there.</param>
    /// <param name="inner">What lies behind it.</param>
    public RecordFileException(string file, int line, string reason, Exception? inner = null)
        : base($"{System.IO.Path.GetFileName(file)}, line {line}: {reason} The file was left as it is.", inner)
    {
        File = file;
        Line = line;
        Reason = reason;
    }

    /// <summary>The file's full path.</summary>
    public string File { get; }

    /// <summary>The line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>What is wrong there.</summary>
    public string Reason { get; }
}
