using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace EightOhm.Circuits;

/// <summary>So many numbers side by side, a frequency each: the same code for registers of 256 and of 512 bits.</summary>
internal interface ILanes<T>
    where T : struct, ILanes<T>
{
    static abstract int Count { get; }

    static abstract T Load(ref double from);

    static abstract T All(double value);

    /// <summary>a·b + c.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);

    static abstract T operator *(T a, T b);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator /(T a, T b);

    static abstract T Negated(T a);

    static abstract T Magnitude(T a);

    /// <summary>The greater of each two lanes.</summary>
    static abstract T Greater(T a, T b);

    /// <summary>Whether each lane of a is at most that of b; a lane that is no number is not.</summary>
    static abstract bool AllAtMost(T a, T b);

    void Store(ref double to);
}

/// <summary>Four lanes, 256 bits.</summary>
internal readonly struct FourLanes(Vector256<double> lanes) : ILanes<FourLanes>
{
    private readonly Vector256<double> lanes = lanes;

    public static int Count => 4;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Load(ref double from) => new(Vector256.LoadUnsafe(ref from));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes All(double value) => new(Vector256.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes MultiplyAdd(FourLanes a, FourLanes b, FourLanes c) => new(Fma.IsSupported ? Fma.MultiplyAdd(a.lanes, b.lanes, c.lanes) : (a.lanes * b.lanes) + c.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator *(FourLanes a, FourLanes b) => new(a.lanes * b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator +(FourLanes a, FourLanes b) => new(a.lanes + b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator -(FourLanes a, FourLanes b) => new(a.lanes - b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes operator /(FourLanes a, FourLanes b) => new(a.lanes / b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Negated(FourLanes a) => new(-a.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Magnitude(FourLanes a) => new(Vector256.Abs(a.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static FourLanes Greater(FourLanes a, FourLanes b) => new(Vector256.Max(a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AllAtMost(FourLanes a, FourLanes b) => Vector256.LessThanOrEqualAll(a.lanes, b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double to) => lanes.StoreUnsafe(ref to);
}

/// <summary>Eight lanes, 512 bits.</summary>
internal readonly struct EightLanes(Vector512<double> lanes) : ILanes<EightLanes>
{
    private readonly Vector512<double> lanes = lanes;

    public static int Count => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Load(ref double from) => new(Vector512.LoadUnsafe(ref from));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes All(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes MultiplyAdd(EightLanes a, EightLanes b, EightLanes c) => new(Vector512.FusedMultiplyAdd(a.lanes, b.lanes, c.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator *(EightLanes a, EightLanes b) => new(a.lanes * b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator +(EightLanes a, EightLanes b) => new(a.lanes + b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator -(EightLanes a, EightLanes b) => new(a.lanes - b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes operator /(EightLanes a, EightLanes b) => new(a.lanes / b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Negated(EightLanes a) => new(-a.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Magnitude(EightLanes a) => new(Vector512.Abs(a.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static EightLanes Greater(EightLanes a, EightLanes b) => new(Vector512.Max(a.lanes, b.lanes));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AllAtMost(EightLanes a, EightLanes b) => Vector512.LessThanOrEqualAll(a.lanes, b.lanes);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(ref double to) => lanes.StoreUnsafe(ref to);
}
