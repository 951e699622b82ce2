using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Stores;

/// <summary>How much one shop may keep.</summary>
public class QuotaTests
{
    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_shop_s_kits_have_so_many_bytes_together(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database, ("KitBytesPerShop", "520"));
        string key = (await service.Key("heavy")).Text, other = (await service.Key("light")).Text;
        Task<Answer> Put(string shop, string sku, string name, string of, params (string, string)[] headers) =>
            service.Send(HttpMethod.Put, $"/v1/shops/{shop}/kits/{sku}", of, SomeKit.Named(name), headers);

        Answer first = await Put("heavy", "one", "kit", key);
        Assert.InRange(first.Body.Length, 213, 260);
        Assert.Equal(201, (await Put("heavy", "two", "kit", key)).Status);
        Answer full = await Put("heavy", "three", "kit", key);
        ProblemAssertions.IsProblem(full, 409, "catalogue.full");
        Assert.Contains("520 bytes", (string)full.Json["detail"]!);
        ProblemAssertions.IsProblem(
            await Put("heavy", "one", new string('n', 99), key, ("If-Match", first.Headers["ETag"])), 409, "catalogue.full");

        Assert.Equal(200, (await Put("heavy", "one", "tik", key, ("If-Match", "*"))).Status);
        Assert.Equal(201, (await Put("light", "one", "kit", other)).Status);
        Assert.Equal(204, (await service.Send(HttpMethod.Delete, "/v1/shops/heavy/kits/two", key)).Status);
        Assert.Equal(201, (await Put("heavy", "three", "kit", key)).Status);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_shop_has_so_many_kits(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database, ("KitsPerShop", "2"));
        string key = (await service.Key("many")).Text;
        Task<Answer> Put(string sku) => service.Send(HttpMethod.Put, "/v1/shops/many/kits/" + sku, key, SomeKit.Named("kit"));
        Assert.Equal((201, 201), ((await Put("one")).Status, (await Put("two")).Status));
        Answer full = await Put("three");
        ProblemAssertions.IsProblem(full, 409, "catalogue.full");
        Assert.Contains("2 kits", (string)full.Json["detail"]!);
        Assert.Equal(204, (await service.Send(HttpMethod.Delete, "/v1/shops/many/kits/one", key)).Status);
        Assert.Equal(201, (await Put("three")).Status);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_shop_has_so_many_records(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database, ("RecordsPerShop", "2"));
        string key = (await service.Key("keen")).Text;
        Answer[] answers = await Task.WhenAll(Enumerable.Range(0, 5).Select(number => Record(service, key, $"build {number}")));
        Answer[] kept = [.. answers.Where(answer => answer.Status == 201)];
        Assert.Equal(2, kept.Length);
        foreach (Answer refused in answers.Except(kept))
        {
            ProblemAssertions.IsProblem(refused, 409, "records.full");
            Assert.Contains("2 records", (string)refused.Json["detail"]!);
        }

        Assert.Equal(201, (await Record(service, (await service.Key("calm")).Text, "build")).Status);
        Assert.Equal(204, (await service.Send(HttpMethod.Delete, kept[0].Headers["Location"], key)).Status);
        Assert.Equal(201, (await Record(service, key, "another")).Status);
    }

    [Theory]
    [OnSqlite]
    [OnPostgres]
    public async Task A_shop_s_records_have_so_many_bytes_together(string store)
    {
        await using TestDatabase database = await TestDatabase.Make(store);
        await using CatalogueService service = await CatalogueService.Start(database, ("RecordBytesPerShop", "40000"));
        string key = (await service.Key("wordy")).Text;
        Answer first = await Record(service, key, "build 10");
        int fit = 40_000 / first.Body.Length;
        Assert.InRange(fit, 1, 20);
        for (int number = 1; number < fit; number++)
            Assert.Equal(201, (await Record(service, key, $"build {10 + number}")).Status);
        Answer full = await Record(service, key, $"build {10 + fit}");
        ProblemAssertions.IsProblem(full, 409, "records.full");
        Assert.Contains("40000 bytes", (string)full.Json["detail"]!);
        Assert.Equal(200, (await Record(service, key, "build 10")).Status);
    }

    private static Task<Answer> Record(CatalogueService service, string key, string name) => service.Send(
        HttpMethod.Post, "/v1/assessments?record=true", key, Builds.With(build => build["name"] = name));
}
