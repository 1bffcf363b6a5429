using MathNet.Numerics.LinearAlgebra;

namespace EightOhm.Numerics;

/// <summary>e to a matrix: halved until it is small, a quotient of polynomials, squared again.</summary>
/// <remarks>C. Moler and C. Van Loan, SIAM Review 45(1), 2003, method 3; the quotient is that of Padé of order 6.</remarks>
internal static class MatrixExponential
{
    private const int Order = 6;

    /// <summary>e to the matrix.</summary>
    /// <param name="a">A square matrix of finite numbers.</param>
    public static Matrix<double> Of(Matrix<double> a)
    {
        var squarings = Math.Max(0, (int)Math.Ceiling(Math.Log2(Math.Max(1e-300, a.L1Norm()))) + 2);
        var x = a / Math.Pow(2, squarings);
        var one = Matrix<double>.Build.DenseIdentity(a.RowCount);
        Matrix<double> above = one, below = one, power = one;
        var c = 1.0;
        for (var k = 1; k <= Order; k++)
        {
            c *= (Order - k + 1.0) / (k * ((2 * Order) - k + 1.0));
            power *= x;
            above += c * power;
            below += (k % 2 == 0 ? c : -c) * power;
        }

        var result = below.Solve(above);
        for (var i = 0; i < squarings; i++)
            result *= result;
        return result;
    }
}
