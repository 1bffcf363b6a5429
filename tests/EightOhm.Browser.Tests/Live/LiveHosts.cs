using EightOhm.Browser.Tests.Browsing;

namespace EightOhm.Browser.Tests.Live;

/// <summary>The tests of the live sheet: a browser and our own program, and no notebook server.</summary>
[CollectionDefinition(Name)]
public sealed class LiveHosts : ICollectionFixture<ChromiumFixture>
{
    /// <summary>The collection's name.</summary>
    public const string Name = "Live";
}
