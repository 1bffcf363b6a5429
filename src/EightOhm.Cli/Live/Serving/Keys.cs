using System.Collections.Concurrent;
using System.Security.Cryptography;

namespace EightOhm.Cli.Live.Serving;

/// <summary>Who may speak to the server: a ticket is good once, for a key that a window keeps until it is closed.</summary>
internal sealed class Keys
{
    private readonly ConcurrentDictionary<string, bool> tickets = new(StringComparer.Ordinal), keys = new(StringComparer.Ordinal);

    /// <summary>A new ticket.</summary>
    public string Ticket()
    {
        var ticket = Secret();
        tickets[ticket] = true;
        return ticket;
    }

    /// <summary>Takes a ticket for a key; null where it is wrong or spent.</summary>
    public string? Exchange(string? ticket)
    {
        if (ticket is null || !tickets.TryRemove(ticket, out _))
            return null;
        var key = Secret();
        keys[key] = true;
        return key;
    }

    /// <summary>Whether a key was given out by this server.</summary>
    public bool Knows(string? key) => key is not null && keys.ContainsKey(key);

    private static string Secret() => RandomNumberGenerator.GetHexString(32, lowercase: true);
}
