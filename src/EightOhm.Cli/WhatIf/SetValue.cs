namespace EightOhm.Cli.WhatIf;

/// <summary>An input that was moved for a run.</summary>
/// <param name="Record">The file name of its record.</param>
/// <param name="Name">The input's symbol.</param>
/// <param name="Before">The value that the record kept, as it reads.</param>
/// <param name="Now">The value of this run.</param>
/// <param name="IsGivenBack">Whether it is again what the chapter says.</param>
internal sealed record SetValue(string Record, string Name, string Before, string Now, bool IsGivenBack)
{
    /// <summary>"P = 120 W instead of 100 W".</summary>
    public override string ToString() => Before == Now
        ? $"{Name} = {Now}, as it was"
        : $"{Name} = {Now}{(IsGivenBack ? ", as the chapter says," : "")} instead of {Before}";
}
