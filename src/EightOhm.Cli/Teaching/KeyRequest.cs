using System.Globalization;

namespace EightOhm.Cli.Teaching;

/// <summary>What the teacher asked for.</summary>
/// <param name="Folder">Where the pages go.</param>
/// <param name="Seed">The seed of the numbers, 0 or more.</param>
internal sealed record KeyRequest(string Folder, int Seed)
{
    public static int SeedOf(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seed)
        ? seed
        : throw RunFailure.BadInput(FormattableString.Invariant($"The seed '{text}' cannot be used. A seed is a whole number from 0 to {int.MaxValue}, such as --seed 42; 0 gives the book's own numbers."));
}
