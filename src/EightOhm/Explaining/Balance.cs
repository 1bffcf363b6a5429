namespace EightOhm.Explaining;

/// <summary>The two sides of an equation that a solver makes equal.</summary>
/// <typeparam name="T">What each side is.</typeparam>
/// <param name="Left">The left side.</param>
/// <param name="Right">The right side.</param>
public readonly record struct Balance<T>(T Left, T Right) : IBalance
    where T : struct
{
    object IBalance.LeftSide => Left;

    object IBalance.RightSide => Right;
}

/// <summary>A balance whose type is not known.</summary>
internal interface IBalance
{
    object LeftSide { get; }

    object RightSide { get; }
}

/// <summary>Writes balances.</summary>
public static class Balance
{
    /// <summary>Left equals right.</summary>
    /// <typeparam name="T">What each side is.</typeparam>
    /// <param name="left">The left side.</param>
    /// <param name="right">The right side.</param>
    public static Balance<T> Of<T>(T left, T right)
        where T : struct => new(left, right);
}

/// <summary>What a solver says of how it came to its result.</summary>
public static class SolverTrace
{
    [ThreadStatic]
    private static int? last;

    /// <summary>Called by a solver when it has converged.</summary>
    /// <param name="iterations">The steps it took.</param>
    public static void Note(int iterations) => last = iterations;

    internal static int? Take()
    {
        var taken = last;
        last = null;
        return taken;
    }
}
