namespace EightOhm.Devices;

/// <summary>A device card that cannot be read: the message names the file, the line, the path inside it and what is allowed there.</summary>
public sealed class CardException : IOException
{
    /// <summary>Makes the exception.</summary>
    /// <param name="file">The card's file, or what else it was read from.</param>
    /// <param name="line">The line, counted from 1.</param>
    /// <param name="place">The path inside the card, such as safeArea.lines[0].points[2].I_C; empty for the whole.</param>
    /// <param name="reason">What is wrong there and what is allowed, a sentence.</param>
    /// <param name="inner">What lies behind it.</param>
    public CardException(string file, int line, string place, string reason, Exception? inner = null)
        : base($"{System.IO.Path.GetFileName(file)}, line {line}{(string.IsNullOrEmpty(place) ? "" : $", {place}")}: {reason}", inner)
    {
        File = file;
        Line = line;
        Place = place;
        Reason = reason;
    }

    /// <summary>The card's file.</summary>
    public string File { get; }

    /// <summary>The line, counted from 1.</summary>
    public int Line { get; }

    /// <summary>The path inside the card; empty for the whole.</summary>
    public string Place { get; }

    /// <summary>What is wrong there and what is allowed.</summary>
    public string Reason { get; }
}
