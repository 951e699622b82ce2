using System.Reflection;
using Cablewright.Service.Documents;
using Cablewright.Service.Tests.Support;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Cablewright.Service.Tests.Documents;

/// <summary>Every operation that a resource describes is served.</summary>
public class OperationTests(ServiceFixture service) : IClassFixture<ServiceFixture>
{
    [Fact]
    public void Every_operation_has_one_route() => Assert.Equal(
        Described().Select(operation => operation.Id).Order(),
        service.Services.GetRequiredService<EndpointDataSource>().Endpoints
            .Select(endpoint => endpoint.Metadata.GetMetadata<Operation>()?.Id)
            .OfType<string>()
            .Order());

    private static IEnumerable<Operation> Described() =>
        from type in typeof(Operation).Assembly.GetTypes()
        from property in type.GetProperties(BindingFlags.Public | BindingFlags.Static)
        where property.PropertyType == typeof(Operation)
        select (Operation)property.GetValue(null)!;
}
