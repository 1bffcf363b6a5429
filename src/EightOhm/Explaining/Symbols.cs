using System.Collections.Frozen;

namespace EightOhm.Explaining;

/// <summary>How a code name reads: stem and subscript, Greek words as letters.</summary>
public static class Symbols
{
    private static readonly FrozenDictionary<string, string> Greek = new Dictionary<string, string>
    {
        ["alpha"] = "α",
        ["beta"] = "β",
        ["gamma"] = "γ",
        ["delta"] = "δ",
        ["Delta"] = "Δ",
        ["epsilon"] = "ε",
        ["eta"] = "η",
        ["theta"] = "θ",
        ["kappa"] = "κ",
        ["lambda"] = "λ",
        ["mu"] = "µ",
        ["nu"] = "ν",
        ["pi"] = "π",
        ["rho"] = "ρ",
        ["sigma"] = "σ",
        ["Sigma"] = "Σ",
        ["tau"] = "τ",
        ["phi"] = "φ",
        ["Phi"] = "Φ",
        ["omega"] = "ω",
        ["Omega"] = "Ω",
        ["zeta"] = "ζ",
        ["xi"] = "ξ",
        ["chi"] = "χ",
        ["psi"] = "ψ",
    }.ToFrozenDictionary();

    /// <summary>The stem and the subscript of a name; the subscript is empty when there is none.</summary>
    /// <param name="name">A name such as R_L, theta_JC, e2.</param>
    public static (string Stem, string Subscript) Split(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var at = name.IndexOf('_', StringComparison.Ordinal);
        var (stem, sub) = at > 0 ? (name[..at], name[(at + 1)..]) : (name, "");
        return (Letter(stem), string.Join(",", sub.Split('_', StringSplitOptions.RemoveEmptyEntries).Select(Letter)));
    }

    private static string Letter(string word) => Greek.GetValueOrDefault(word, word);
}
