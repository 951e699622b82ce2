namespace Cablewright.Engine.Changes;

/// <summary>One member of a build and what it is to hold.</summary>
/// <param name="Pointer">JSON pointer (RFC 6901); it may end in <c>-</c>, the place after the last item of a list.</param>
/// <param name="From">What it holds; <c>null</c> where it is not stated.</param>
/// <param name="To">What it is to hold; <c>null</c>: leave it out.</param>
internal sealed record Edit(string Pointer, string? From, string? To);
