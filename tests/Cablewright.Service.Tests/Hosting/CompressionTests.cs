using System.IO.Compression;
using Cablewright.Service.Kits;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Hosting;

/// <summary>Answers are sent compressed to whoever accepts it, and caches are told what hangs on which header.</summary>
public class CompressionTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private const string Quick = "/v1/assessments/quick?ratedOutput=1000+W&length=16+ft";
    private const string KitAddress = "/v1/shops/packed/kits/AK-150";

    [Theory]
    [InlineData("/openapi/v1.json", "br, gzip", "br")]
    [InlineData("/openapi/v1.json", "gzip", "gzip")]
    [InlineData("/v1/reference/conductors", "br;q=0.5, gzip", "gzip")]
    [InlineData(Quick, "br", "br")]
    [InlineData("/nowhere", "br", "br")]
    [InlineData("/docs/index.html", "gzip", "gzip")]
    [InlineData("/", "br", "br")]
    [InlineData("/site/page/main.js", "gzip", "gzip")]
    public async Task An_answer_is_the_same_compressed(string address, string accepted, string encoding)
    {
        Answer plain = await service.Get(address), packed = await service.Get(address, ("Accept-Encoding", accepted));
        Assert.False(plain.Headers.ContainsKey("Content-Encoding"));
        Assert.Equal((plain.Status, plain.ContentType), (packed.Status, packed.ContentType));
        Assert.Equal(encoding, packed.Headers["Content-Encoding"]);
        Assert.True(packed.Body.Length < plain.Body.Length);
        if (plain.Status == 200) Assert.Equal(plain.Body, Unpacked(packed.Body, encoding));
    }

    [Fact]
    public async Task An_assessment_is_the_same_compressed()
    {
        Answer plain = await service.Post(Builds.Small);
        Answer packed = await service.Post(Builds.Small, headers: ("Accept-Encoding", "br"));
        Assert.Equal(plain.Body, Unpacked(packed.Body, "br"));
    }

    [Theory]
    [InlineData("identity")]
    [InlineData("br;q=0, gzip;q=0")]
    [InlineData("zstd")]
    public async Task Nothing_is_compressed_for_a_caller_that_does_not_accept_it(string accepted) => Assert.False(
        (await service.Get("/v1/reference/fuses", ("Accept-Encoding", accepted))).Headers.ContainsKey("Content-Encoding"));

    /// <summary>RFC 9110, 8.8.1 and 13.1.2: one tag for compressed and plain bytes is weak, and compares with either.</summary>
    [Theory]
    [InlineData(Quick, "Accept, Accept-Encoding")]
    [InlineData("/openapi/v1.json", "Accept-Encoding")]
    public async Task Whoever_has_the_answer_in_one_coding_is_told_so_in_another(string address, string vary)
    {
        string plain = (await service.Get(address)).Headers["ETag"];
        string packed = (await service.Get(address, ("Accept-Encoding", "gzip"))).Headers["ETag"];
        Assert.Equal("W/" + plain, packed);
        foreach (string encoding in new[] { "br", "identity" })
        {
            foreach (string tag in new[] { plain, packed })
            {
                Answer again = await service.Get(address, ("Accept-Encoding", encoding), ("If-None-Match", tag));
                Assert.Equal((304, 0), (again.Status, again.Body.Length));
                Assert.Equal(vary, string.Join(", ", again.Headers["Vary"].Split(", ").Order()));
            }
        }
    }

    /// <summary>RFC 9110, 13.1.1: <c>If-Match</c> compares strongly.</summary>
    [Fact]
    public async Task The_tag_of_a_kit_serves_for_writing_whatever_the_caller_accepts()
    {
        (string, string)[] headers = [("Authorization", $"Bearer {await service.Key("packed")}"), ("Accept-Encoding", "br")];
        Answer made = await Put(headers);
        Assert.Equal(201, made.Status);
        Answer read = await service.Get(KitAddress, headers);
        Assert.StartsWith("\"", read.Headers["ETag"]);
        Assert.Equal(made.Headers["ETag"], read.Headers["ETag"]);
        Assert.False(read.Headers.ContainsKey("Content-Encoding"));
        Assert.Equal(200, (await Put([.. headers, ("If-Match", read.Headers["ETag"])])).Status);
    }

    /// <summary>RFC 9110, 12.5.5: said of each answer, not only of those to requests that have the header.</summary>
    [Theory]
    [InlineData("", "Accept-Encoding")]
    [InlineData("https://shop.example", "Accept-Encoding, Origin")]
    [InlineData("https://shop.example,https://b.example", "Accept-Encoding, Origin")]
    public async Task Vary_names_what_an_answer_hangs_on(string origins, string vary)
    {
        await using var other = new ServiceFixture();
        other.Settings["Cablewright:AllowedOrigins"] = origins;
        await other.InitializeAsync();
        foreach ((string, string)[] headers in ((string, string)[][])
            [[], [("Accept-Encoding", "gzip")], [("Origin", "https://shop.example")], [("Origin", "https://x.example")]])
        {
            Answer answer = await other.Get("/v1/rulesets", headers);
            Assert.Equal(vary.Split(", ").Order(), answer.Headers["Vary"].Split(", ").Order());
        }
    }

    [Fact]
    public async Task A_batch_comes_in_two_forms_and_says_so() =>
        Assert.Contains("Accept", (await service.PostBatch("[]", "application/json")).Headers["Vary"].Split(", "));

    private Task<Answer> Put(params (string, string)[] headers) => service.Send(
        new HttpRequestMessage(HttpMethod.Put, KitAddress)
        {
            Content = new StringContent(PutKit.Operation.Body!.Example()!.ToJsonString(), null, "application/json"),
        },
        headers);

    private static byte[] Unpacked(byte[] packed, string encoding)
    {
        using var plain = new MemoryStream();
        using Stream unpacking = encoding == "br"
            ? new BrotliStream(new MemoryStream(packed), CompressionMode.Decompress)
            : new GZipStream(new MemoryStream(packed), CompressionMode.Decompress);
        unpacking.CopyTo(plain);
        return plain.ToArray();
    }
}
