using System.Linq.Expressions;

namespace EightOhm.Record;

/// <summary>A requirement that lacks its limit still; it is made by the limit.</summary>
public sealed class RequirementDraft
{
    private readonly Func<RequirementLimit?, RequirementLimit?, Requirement> _make;

    internal RequirementDraft(Func<RequirementLimit?, RequirementLimit?, Requirement> make) => _make = make;

    /// <summary>The value must be the limit or less.</summary>
    /// <param name="limit">An entry's name, or a limit by <see cref="RequirementLimit"/>.</param>
    /// <returns>How it stands now.</returns>
    /// <exception cref="RecordException">The limit is of another kind than the value, or its rule is none that the record can keep.</exception>
    public Requirement AtMost(RequirementLimit limit) => _make(null, limit ?? throw new ArgumentNullException(nameof(limit)));

    /// <inheritdoc cref="AtMost(RequirementLimit)"/>
    /// <param name="rule">A rule over entries, such as <c>(Power P) => P * 0.5</c>.</param>
    public Requirement AtMost(LambdaExpression rule) => AtMost(RequirementLimit.Of(rule));

    /// <inheritdoc cref="AtMost(RequirementLimit)"/>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="constant">A natural constant: 0 of any quantity, or 1.</param>
    public Requirement AtMost<T>(T constant)
        where T : struct => AtMost(RequirementLimit.Of(constant));

    /// <summary>The value must be the limit or more.</summary>
    /// <inheritdoc cref="AtMost(RequirementLimit)"/>
    public Requirement AtLeast(RequirementLimit limit) => _make(limit ?? throw new ArgumentNullException(nameof(limit)), null);

    /// <inheritdoc cref="AtLeast(RequirementLimit)"/>
    /// <param name="rule">A rule over entries, such as <c>(Power P) => P * 0.5</c>.</param>
    public Requirement AtLeast(LambdaExpression rule) => AtLeast(RequirementLimit.Of(rule));

    /// <inheritdoc cref="AtLeast(RequirementLimit)"/>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="constant">A natural constant: 0 of any quantity, or 1.</param>
    public Requirement AtLeast<T>(T constant)
        where T : struct => AtLeast(RequirementLimit.Of(constant));

    /// <summary>The value must lie from one limit to the other, on them too.</summary>
    /// <param name="low">The least value allowed.</param>
    /// <param name="high">The greatest value allowed.</param>
    /// <returns>How it stands now.</returns>
    /// <exception cref="RecordException">A limit is of another kind than the value, or its rule is none that the record can keep.</exception>
    public Requirement Between(RequirementLimit low, RequirementLimit high) =>
        _make(low ?? throw new ArgumentNullException(nameof(low)), high ?? throw new ArgumentNullException(nameof(high)));

    /// <inheritdoc cref="Between(RequirementLimit, RequirementLimit)"/>
    public Requirement Between(LambdaExpression low, LambdaExpression high) => Between(RequirementLimit.Of(low), RequirementLimit.Of(high));
}
