namespace EightOhm.Record;
internal static class Captures { public static string? Find(Delegate body) => null; }
