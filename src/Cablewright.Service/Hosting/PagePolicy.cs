namespace Cablewright.Service.Hosting;

/// <summary>
/// What a page may load and run, where an endpoint answers with one: metadata that <see cref="SecurityHeaders"/> reads.
/// </summary>
/// <param name="Text">The content security policy.</param>
internal sealed record PagePolicy(string Text);
