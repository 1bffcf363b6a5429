namespace EightOhm.Quantities;

/// <summary>An input that cannot be: names the parameter, its value with unit and what is allowed.</summary>
/// <remarks>The message is shown whole and alone: the framework's "(Parameter …)" tail would only repeat it.</remarks>
public sealed class RefusedValueException : ArgumentOutOfRangeException
{
    private readonly string _message;

    /// <summary>Makes the exception.</summary>
    /// <param name="parameter">The parameter refused.</param>
    /// <param name="message">The whole sentence.</param>
    public RefusedValueException(string parameter, string message)
        : base(parameter, message) => _message = message;

    /// <inheritdoc/>
    public override string Message => _message;
}
