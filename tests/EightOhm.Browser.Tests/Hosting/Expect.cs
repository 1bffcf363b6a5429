using EightOhm.Record;

namespace EightOhm.Browser.Tests.Hosting;

/// <summary>Expectations whose failure shows every line whole; xunit shortens long ones.</summary>
internal static class Expect
{
    public static void Nothing(IEnumerable<string> lines)
    {
        var all = string.Join('\n', lines);
        Assert.True(all.Length == 0, all);
    }

    /// <summary>Fails unless two records hold the same entries, values (to twelve digits) and states.</summary>
    public static void SameRecord(DesignRecord stored, DesignRecord computed)
    {
        Assert.Equal(stored.Entries.Select(entry => $"{entry.Name} {entry.Role} {entry.State}"), computed.Entries.Select(entry => $"{entry.Name} {entry.Role} {entry.State}"));
        Assert.Equal(stored.Compliance().Select(r => $"{r.Key} {r.Limit} {r.State}"), computed.Compliance().Select(r => $"{r.Key} {r.Limit} {r.State}"));
        foreach (var (was, now) in stored.Entries.Zip(computed.Entries))
        {
            if (was.Kind is not { } kind)
            {
                Assert.Equal(was.Value, now.Value);
                continue;
            }

            var (old, fresh) = (kind.ToSi(was.Value!), kind.ToSi(now.Value!));
            Assert.True(Math.Abs(old - fresh) <= 1e-12 * Math.Abs(old), $"{was.Name}: {was.Reads} is stored, {now.Reads} computed.");
        }
    }
}
