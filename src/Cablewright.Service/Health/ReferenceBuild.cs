namespace Cablewright.Service.Health;

/// <summary>A build whose answer is known from a hand calculation.</summary>
internal static class ReferenceBuild
{
    /// <summary>Whether the engine gives that answer; computed once.</summary>
    public static Lazy<bool> GivesItsKnownAnswer { get; } = new(Check);

    private static bool Check() => false;
}
