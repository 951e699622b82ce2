using System.Text;
using System.Text.Json;
using Cablewright.Contract;
using Cablewright.Contract.Assessments;
using Cablewright.Contract.Builds;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Drawings;

/// <summary>Builds with their answers, as what is drawn from.</summary>
internal static class Answers
{
    /// <summary>The build of a body, and its answer read back; nothing where the service refuses it.</summary>
    public static async Task<(Build Build, Assessment Answer)?> To(this ServiceFixture service, string body)
    {
        Answer answer = await service.Post(body);
        return answer.Status == 200
            ? (Read(Encoding.UTF8.GetBytes(body), ContractJson.Default.Build), Read(answer.Body, ContractJson.Default.Assessment))
            : null;
    }

    private static T Read<T>(byte[] json, System.Text.Json.Serialization.Metadata.JsonTypeInfo<T> shape) =>
        JsonSerializer.Deserialize(json, shape)!;
}
