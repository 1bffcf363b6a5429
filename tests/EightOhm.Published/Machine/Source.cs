namespace EightOhm.Published.Machine;

/// <summary>How we know what a source prints.</summary>
internal enum Seen
{
    /// <summary>The page itself was read.</summary>
    Page,

    /// <summary>Somebody's careful copy of the page was read, such as a textbook companion's code.</summary>
    Transcription,

    /// <summary>A page that quotes, or a page without an editor: a lecture, a forum, a glossary.</summary>
    Secondary,

    /// <summary>Nobody looked: it is remembered. Kept, never counted.</summary>
    Memory,
}

/// <summary>Where a printed value stands.</summary>
/// <param name="Title">Author, title, edition; or maker, document and its number.</param>
/// <param name="Place">Example, section, page.</param>
/// <param name="Seen">How we know.</param>
internal sealed record Source(string Title, string Place, Seen Seen)
{
    public bool Counts => Seen != Seen.Memory;

    /// <summary>A maker's document whose page was read.</summary>
    public static Source Datasheet(string title, string place) => new(title, place, Seen.Page);

    /// <summary>A textbook example as its companion's code prints it.</summary>
    public static Source Companion(string title, string place) => new(title, place, Seen.Transcription);

    /// <summary>A lecture, a glossary, a forum.</summary>
    public static Source Secondhand(string title, string place) => new(title, place, Seen.Secondary);

    /// <summary>A value that is remembered; the ledger keeps it and does not count it.</summary>
    public static Source FromMemory(string title, string place) => new(title, place, Seen.Memory);

    public override string ToString() => Place.Length > 0 ? $"{Title}, {Place}" : Title;
}
