namespace EightOhm.Record;

/// <summary>Something asked of the record that it cannot do: the message says what was asked, what is there and what to try.</summary>
public sealed class RecordException : InvalidOperationException
{
    /// <summary>Makes the exception.</summary>
    /// <param name="message">The whole sentence.</param>
    /// <param name="inner">What lies behind it.</param>
    public RecordException(string message, Exception? inner = null)
        : base(message, inner)
    {
    }

    /// <summary>Whether what was asked for is in the record but has no value: the design's numbers, not the code, have no answer here.</summary>
    public bool IsWithoutAnswer { get; init; }
}
