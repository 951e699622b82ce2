using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Stores;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Records;

public class RecordTests(CatalogueServices services) : IClassFixture<CatalogueServices>
{
    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task An_assessment_is_recorded_once_and_never_changes(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("records")).Text;
        Answer made = await Post(service, key, Builds.Small);
        Assert.Equal(201, made.Status);
        Assert.Equal($"/v1/assessments/{made.Json["id"]}", made.Headers["Location"]);
        Assert.Empty(ContractSchemas.Faults("Assessment", made.Json));
        Assert.Equal("12 ft", (string)made.Json["build"]!["runs"]![0]!["length"]!);

        Answer again = await Post(service, key, Builds.Small);
        Assert.Equal(200, again.Status);
        Assert.Equal(made.Body, again.Body);
        Answer read = await service.Send(HttpMethod.Get, made.Headers["Location"], key);
        Assert.Equal(made.Body, read.Body);
        Assert.Equal(
            304,
            (await service.Send(
                HttpMethod.Get, made.Headers["Location"], key, null, ("If-None-Match", read.Headers["ETag"]))).Status);
        Answer other = await Post(service, key, Builds.With(build => build["name"] = "another name"));
        Assert.Equal(201, other.Status);
        Assert.NotEqual((string)made.Json["id"]!, (string)other.Json["id"]!);

        Assert.Equal(204, (await service.Send(HttpMethod.Delete, made.Headers["Location"], key)).Status);
        ProblemAssertions.IsProblem(
            await service.Send(HttpMethod.Get, made.Headers["Location"], key), 404, "resource.not-found");
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task Of_many_who_record_the_same_one_makes_it(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("together")).Text;
        Answer[] answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => Post(service, key, Builds.Small)));
        Assert.Single(answers, answer => answer.Status == 201);
        Assert.All(answers, answer => Assert.Equal(answers[0].Body, answer.Body));
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_later_release_s_record_is_answered_as_it_is_and_a_damaged_one_with_a_problem(string store)
    {
        CatalogueService service = services[store];
        string key = (await service.Key("damaged")).Text;
        Answer made = await Post(service, key, Builds.Small);
        string address = made.Headers["Location"], id = (string)made.Json["id"]!;
        Task Keep(byte[] body) => service.Database.Execute("""UPDATE records SET "Body" = @0 WHERE "Id" = @1""", body, id);

        byte[] later = [.. "{\"weather\":\"of a later release\","u8, .. made.Body[1..]];
        await Keep(later);
        Assert.Equal(later, (await service.Send(HttpMethod.Get, address, key)).Body);
        foreach (byte[] damaged in new byte[][] { [], made.Body[..^1], [.. made.Body[..20], 0xFF, .. made.Body[21..]] })
        {
            await Keep(damaged);
            Answer answer = await service.Send(HttpMethod.Get, address, key);
            ProblemAssertions.IsProblem(answer, 409, "record.unreadable");
            Assert.Contains(id, (string)answer.Json["detail"]!);
        }

        Assert.Equal(204, (await service.Send(HttpMethod.Delete, address, key)).Status);
        Assert.Equal(201, (await Post(service, key, Builds.Small)).Status);
    }

    [Theory]
    [InlineData("?recrod=true", "/recrod", "parameter.unknown")]
    [InlineData("?record=yes", "/record", "word.unknown")]
    [InlineData("?record=true&record=true", "/record", "parameter.repeated")]
    public async Task A_misspelt_wish_to_record_is_never_dropped(string query, string pointer, string code)
    {
        CatalogueService service = services[Store.Sqlite];
        Answer answer = await service.Send(
            HttpMethod.Post, "/v1/assessments" + query, (await service.Key("misspelt")).Text, Builds.Small);
        ProblemAssertions.IsProblem(answer, 400, "request.not-understood");
        Assert.Equal([(pointer, code)], answer.Faults);
    }

    [Fact]
    public async Task Without_the_wish_nothing_is_recorded_and_no_key_is_needed()
    {
        CatalogueService service = services[Store.Sqlite];
        Answer answer = await service.Send(HttpMethod.Post, "/v1/assessments?record=false", null, Builds.Small);
        Assert.Equal(200, answer.Status);
        ProblemAssertions.IsProblem(
            await service.Send(HttpMethod.Get, $"/v1/assessments/{answer.Json["id"]}", (await service.Key("none")).Text),
            404,
            "resource.not-found");
    }

    private static Task<Answer> Post(CatalogueService service, string key, string build) =>
        service.Send(HttpMethod.Post, "/v1/assessments?record=true", key, build);
}
