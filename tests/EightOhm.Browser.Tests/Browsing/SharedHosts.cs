using EightOhm.Browser.Tests.Hosting;

// A browser, a notebook server and its kernels already fill a small machine.
[assembly: CollectionBehavior(DisableTestParallelization = true)]

namespace EightOhm.Browser.Tests.Browsing;

/// <summary>The tests that share one notebook server and one browser.</summary>
[CollectionDefinition(Name)]
public sealed class SharedHosts : ICollectionFixture<JupyterFixture>, ICollectionFixture<ChromiumFixture>
{
    /// <summary>The collection's name.</summary>
    public const string Name = "Browser";
}
