namespace Cablewright.Storage.Records;

/// <summary>One recorded assessment, in the very bytes that were answered.</summary>
internal sealed class RecordRow
{
    public required string Id { get; set; }

    public required string Shop { get; set; }

    public required byte[] Body { get; set; }

    public DateTimeOffset CreatedAt { get; set; }
}
