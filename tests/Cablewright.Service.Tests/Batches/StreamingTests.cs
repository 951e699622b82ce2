using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using Cablewright.Service.Tests.Hosting;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Batches;

/// <summary>Against a process of its own, over a real connection.</summary>
public class StreamingTests(ServiceProcess process) : IClassFixture<ServiceProcess>
{
    private static readonly string Build = JsonNode.Parse(Builds.Small)!.ToJsonString();
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Each_build_is_answered_before_the_next_is_sent()
    {
        using var talk = new Conversation(process.Address, "talk");
        for (int line = 1; line <= 20; line++)
        {
            await talk.Say(Build);
            string? heard = await talk.Hear().WaitAsync(Patience);
            Assert.StartsWith($"{{\"line\":{line},\"status\":200,\"assessment\":{{", heard);
        }

        await talk.Finish();
        Assert.Null(await talk.Hear().WaitAsync(Patience));
    }

    /// <summary>What is compressed is sent off line by line all the same.</summary>
    [Fact]
    public async Task A_compressed_answer_comes_before_the_next_build_is_sent()
    {
        using var talk = new Conversation(process.Address, "packed", "gzip");
        using var packed = new MemoryStream();
        for (int line = 1; line <= 3; line++)
        {
            await talk.Say(Build);
            while (Unpacked(packed.ToArray()).Count(letter => letter == '\n') < line)
                packed.Write(await talk.HearChunk().WaitAsync(Patience));
        }

        await talk.Finish();
        Assert.StartsWith("{\"line\":1,\"status\":200,\"assessment\":{", Unpacked(packed.ToArray()));
    }

    [Fact]
    public async Task Work_stops_when_the_caller_hangs_up()
    {
        using (var talk = new Conversation(process.Address, "hang-up"))
        {
            await talk.Say(Build);
            await talk.Hear().WaitAsync(Patience);
        }

        JsonNode logged = JsonNode.Parse(Assert.Single(await process.LogOf("hang-up")))!;
        Assert.Equal("/v1/assessments/batch", (string)logged["Route"]!);
        Assert.Null(logged["@l"]);
        using HttpResponseMessage alive = await process.Client.GetAsync("/health/live");
        Assert.True(alive.IsSuccessStatusCode);
    }

    /// <summary>As much of a text as its first compressed bytes hold.</summary>
    private static string Unpacked(byte[] packed)
    {
        using var plain = new MemoryStream();
        using var unpacking = new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        try
        {
            unpacking.CopyTo(plain);
        }
        catch (InvalidDataException)
        {
            // The rest is still to come.
        }

        return Encoding.UTF8.GetString(plain.ToArray());
    }

    /// <summary>More than the 30 MB that the server lets any other body have.</summary>
    [Fact]
    public async Task A_stream_may_be_of_any_size()
    {
        const int Count = 130;
        string line = "{}".PadRight(250_000);
        using var talk = new Conversation(process.Address, "large");
        Task sending = Task.Run(async () =>
        {
            for (int sent = 0; sent < Count; sent++) await talk.Say(line);
            await talk.Finish();
        });
        for (int heard = 1; heard <= Count; heard++)
            Assert.StartsWith($"{{\"line\":{heard},\"status\":400,", await talk.Hear().WaitAsync(Patience));
        Assert.Null(await talk.Hear().WaitAsync(Patience));
        await sending;
    }
}
