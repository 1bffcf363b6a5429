namespace EightOhm.Numerics;

/// <summary>Halving: for what holds at the low end of an interval and no longer at the high end, how far it holds.</summary>
/// <remarks>For answers of yes or no alone; where there is a value, <c>Brent</c> of MathNet.Numerics takes a fraction of the looks.</remarks>
internal static class Halving
{
    /// <summary>Narrows an interval by its middle.</summary>
    /// <param name="holds">What is asked.</param>
    /// <param name="low">A place where it holds.</param>
    /// <param name="high">A higher one where it does not.</param>
    /// <param name="steps">How often it is halved at most.</param>
    /// <param name="width">How narrow is narrow enough.</param>
    /// <returns>Where it still holds and where it no longer does.</returns>
    public static (double Low, double High) Narrowed(Func<double, bool> holds, double low, double high, int steps, double width = 0)
    {
        for (var i = 0; i < steps && high - low > width; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return (low, high);
    }

    /// <summary>The same over many decades: by the geometric mean, until no number lies between.</summary>
    /// <param name="holds">What is asked.</param>
    /// <param name="low">A place where it holds; greater than 0.</param>
    /// <param name="high">A higher one where it does not.</param>
    /// <param name="nearness">By what part of themselves both may differ at the end; to the last digit if not given.</param>
    public static (double Low, double High) NarrowedByRatio(Func<double, bool> holds, double low, double high, double nearness = 1e-15)
    {
        // Each step halves the logarithm of the ratio: the greatest that there is, 2^2098, is a digit's worth after 63.
        for (var i = 0; i < 200 && high / low > 1 + nearness; i++)
        {
            var middle = Math.Sqrt(low) * Math.Sqrt(high);
            if (middle <= low || middle >= high)
                break;
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return (low, high);
    }

    /// <summary>The same over whole numbers: the last at which it holds.</summary>
    /// <param name="holds">What is asked.</param>
    /// <param name="low">A number at which it holds.</param>
    /// <param name="high">A higher one at which it does not.</param>
    public static int Last(Func<int, bool> holds, int low, int high)
    {
        while (high - low > 1)
        {
            var middle = low + ((high - low) / 2);
            (low, high) = holds(middle) ? (middle, high) : (low, middle);
        }

        return low;
    }
}
