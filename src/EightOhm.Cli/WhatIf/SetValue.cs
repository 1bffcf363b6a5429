namespace EightOhm.Cli.WhatIf;

/// <summary>An input that was moved for a run.</summary>
/// <param name="Record">The path of its record in this run.</param>
/// <param name="Design">The design's name where the run has several, else empty.</param>
/// <param name="Name">The input's symbol.</param>
/// <param name="Before">The value that the record kept, as it reads.</param>
/// <param name="Now">The value of this run.</param>
/// <param name="IsGivenBack">Whether it is again what the chapter says.</param>
internal sealed record SetValue(string Record, string Design, string Name, string Before, string Now, bool IsGivenBack)
{
    /// <summary>"P = 120 W instead of 100 W".</summary>
    public override string ToString() => Before == Now
        ? $"{Of}{Name} = {Now}, as it was"
        : $"{Of}{Name} = {Now}{(IsGivenBack ? ", as the chapter says," : "")} instead of {Before}";

    private string Of => Design.Length > 0 ? $"{Design}: " : "";
}
