namespace EightOhm.Cli.Live;

/// <summary>What the person asked for.</summary>
/// <param name="Folder">The folder, or one notebook.</param>
/// <param name="Port">The port; 0 for any that is free.</param>
/// <param name="OpensBrowser">Whether a browser is to be opened.</param>
internal sealed record OpenRequest(string Folder, int Port, bool OpensBrowser);
