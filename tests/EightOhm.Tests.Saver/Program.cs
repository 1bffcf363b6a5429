using System.Globalization;
using EightOhm.Quantities;
using EightOhm.Record;
using EightOhm.Tests.Saver;

// A process of its own that works on a record: to be killed while it saves, or to recompute without the lambdas; or that solves without vector instructions.
var (job, path) = (args[0], args[1]);
switch (job)
{
    case "loop":
        var record = DesignRecord.Open(path);
        for (var n = record.Get<int>("n") + 1; ; n++)
        {
            record.Target("n", n, NumberedState.Note(n));
            Console.WriteLine(n);
        }

    case "stop-before-rename":
        Save(new KilledFiles(KillPoint.BeforeRename));
        break;
    case "stop-in-write":
        Save(new KilledFiles(KillPoint.InWrite));
        break;
    case "set":
        var loaded = DesignRecord.Load(path);
        loaded.Set(args[2], args[3]);
        foreach (var entry in loaded.Entries)
            Console.WriteLine($"{entry.Name}={entry.Kind!.ToSi(entry.Value!).ToString("R", CultureInfo.InvariantCulture)}");
        break;
    case "followers":
        Console.WriteLine(System.Numerics.Vector<double>.Count);
        foreach (var value in FollowerFigures.All())
            Console.WriteLine(value.ToString("R", CultureInfo.InvariantCulture));
        break;
    default:
        return 2;
}

return 0;

void Save(IFileLayer files)
{
    var victim = DesignRecord.Open(path, files);
    var n = victim.Get<int>("n") + 1;
    victim.Target("n", n, NumberedState.Note(n));
}
