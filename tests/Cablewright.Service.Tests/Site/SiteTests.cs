using System.Security.Cryptography;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Site;

/// <summary>How the try page and the widget are served; what they do is checked in a browser, in <c>tests/browser</c>.</summary>
public partial class SiteTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    private static readonly string Folder = Path.Combine(Repository.Root, "src", "Cablewright.Service", "wwwroot");

    /// <summary>The files, and their addresses.</summary>
    public static TheoryData<string> Addresses => [.. Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
        .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'))
        .Select(path => path == "index.html" ? "/" : "/" + path)
        .Order()];

    [Theory]
    [MemberData(nameof(Addresses))]
    public async Task A_file_is_served_as_it_is_and_named_by_its_tag(string address)
    {
        Answer answer = await service.Get(address);
        Assert.Equal(200, answer.Status);
        string file = Path.Combine(Folder, address == "/" ? "index.html" : address[1..]);
        Assert.Equal(await File.ReadAllBytesAsync(file), answer.Body);
        Assert.Equal("nosniff", answer.Headers["X-Content-Type-Options"]);
        Assert.Equal(304, (await service.Get(address, ("If-None-Match", answer.Headers["ETag"]))).Status);
        Answer head = await service.Send(new HttpRequestMessage(HttpMethod.Head, address));
        Assert.Equal((200, answer.ContentType, 0), (head.Status, head.ContentType, head.Body.Length));
        Assert.Equal(answer.Headers["ETag"], head.Headers["ETag"]);
    }

    [Theory]
    [InlineData("/", "text/html; charset=utf-8")]
    [InlineData("/site/page/main.js", "text/javascript; charset=utf-8")]
    [InlineData("/site/style/page.css", "text/css; charset=utf-8")]
    [InlineData("/site/icon.svg", "image/svg+xml")]
    public async Task The_page_runs_nothing_but_its_own_files(string address, string form)
    {
        Answer answer = await service.Get(address);
        Assert.Equal(form, answer.ContentType);
        Assert.Equal("no-cache", answer.Headers["Cache-Control"]);
        string policy = answer.Headers["Content-Security-Policy"];
        Assert.StartsWith("default-src 'none'; script-src 'self'; style-src 'self';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy);
    }

    /// <summary>Behind a proxy that serves it below a path, an address that starts at the root leads elsewhere.</summary>
    [Fact]
    public async Task The_page_leads_only_to_addresses_below_its_own()
    {
        string page = (await service.Get("/")).Text;
        string[] led = [.. Reference().Matches(page).Select(match => match.Groups[1].Value)];
        Assert.Contains("site/page/main.js", led);
        Assert.All(led, address => Assert.Matches("^(#|docs/|site/)", address));
        foreach (string address in led.Where(address => address[0] != '#'))
            Assert.InRange((await service.Get("/" + address)).Status, 200, 302);
    }

    [Fact]
    public void No_script_makes_markup_of_text() => Assert.Empty(
        from file in Directory.EnumerateFiles(Folder, "*.js", SearchOption.AllDirectories)
        from line in File.ReadLines(file).Index()
        where Forbidden().IsMatch(line.Item)
        select $"{Path.GetRelativePath(Folder, file)}:{line.Index + 1}");

    /// <summary>`Subresource Integrity` of the W3C: SHA-384 of the very bytes, in base64.</summary>
    [Fact]
    public async Task Each_version_of_the_widget_is_what_its_integrity_says_and_may_be_read_from_any_origin()
    {
        Answer told = await service.Get("/widget/versions.json");
        JsonArray versions = told.Json["versions"]!.AsArray();
        Assert.Contains(versions, version => (string)version!["version"]! == (string)told.Json["newest"]!);
        Assert.Equal(Directory.GetDirectories(Path.Combine(Folder, "widget")).Length, versions.Count);
        foreach (JsonNode? version in versions)
        {
            Answer script = await service.Get($"/widget/{version!["script"]}", ("Origin", "https://shop.example"));
            Assert.Equal((string)version["integrity"]!, "sha384-" + Convert.ToBase64String(SHA384.HashData(script.Body)));
            Assert.Equal("*", script.Headers["Access-Control-Allow-Origin"]);
            Assert.Equal("cross-origin", script.Headers["Cross-Origin-Resource-Policy"]);
            Assert.Contains("immutable", script.Headers["Cache-Control"]);
        }
    }

    [GeneratedRegex("(?:href|src)=\"([^\"]*)\"")]
    private static partial Regex Reference();

    [GeneratedRegex(@"innerHTML|outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function|srcdoc|javascript:")]
    private static partial Regex Forbidden();
}
