namespace Cablewright.Engine.Sizing;

/// <summary>What a choice may be made of: a choice from more is looked for only where less does not do.</summary>
internal enum Stock
{
    /// <summary>One conductor a run, of the sizes that the trade keeps.</summary>
    Single,

    /// <summary>The same, or two of the largest in parallel.</summary>
    Paired,

    /// <summary>
    /// Every usual size, several in parallel, a ground of another size than its supply, and a conductor that carries what the
    /// programme draws continuously rather than full output.
    /// </summary>
    Any,
}
