using System.Text;
using Cablewright.Service.Answers;
using Microsoft.AspNetCore.OpenApi;
using Microsoft.OpenApi;

namespace Cablewright.Service.Documents;

/// <summary>The contract as it is served; it cannot change while the process runs, so it is made once.</summary>
/// <param name="services">Where the generator is.</param>
internal sealed class ContractDocument(IServiceProvider services)
{
    /// <summary>The name under which it is generated.</summary>
    public const string Name = "v1";

    private readonly Lazy<Task<JsonAnswer>> document = new(
        () => Make(services.GetRequiredKeyedService<IOpenApiDocumentProvider>(Name)));

    /// <summary>Answers with the contract.</summary>
    public static async Task<IResult> Answer(ContractDocument contract) => await contract.document.Value;

    private static async Task<JsonAnswer> Make(IOpenApiDocumentProvider provider)
    {
        OpenApiDocument document = await provider.GetOpenApiDocumentAsync(CancellationToken.None);
        return TaggedAnswer.Fixed(Encoding.UTF8.GetBytes(await document.SerializeAsJsonAsync(OpenApiSpecVersion.OpenApi3_1)));
    }
}
