using System.Text.Json;
using System.Text.Json.Nodes;
using Cablewright.Service.Answers;
using Cablewright.Service.Tests.Documents;
using Cablewright.Service.Tests.Support;

namespace Cablewright.Service.Tests.Fuzz;

/// <summary>What the answer to any request has to be: one that the contract has for its call.</summary>
internal static class CallCheck
{
    private const string Lines = "application/x-ndjson";
    private const string ProblemType = "application/problem+json";

    /// <summary>The fault is the whole build's, so no member is named.</summary>
    private const string TooMuchWork = "build.too-much-work";

    /// <summary>What is wrong with an answer; empty where all is well.</summary>
    public static IReadOnlyList<string> Troubles(ContractCall call, FuzzRequest request, Answer answer)
    {
        try
        {
            return [.. Find(call, request, answer)];
        }
        catch (JsonException fault)
        {
            return [$"status {answer.Status} without JSON: {fault.Message}"];
        }
    }

    private static IEnumerable<string> Find(ContractCall call, FuzzRequest request, Answer answer)
    {
        bool isThatCall = request.Method == call.Method && IsAt(call, request.Address.Split('?')[0]);
        if (answer.Status >= 500) return [$"status {answer.Status}"];
        if (isThatCall && !call.Answers(answer.Status)) return [$"the contract has no answer {answer.Status}"];
        if (request.Method == "HEAD") return [];
        string mediaType = answer.ContentType.Split(';')[0];
        if (answer.Status >= 400)
            return mediaType == ProblemType ? Problem(answer) : [$"status {answer.Status} as {mediaType}"];
        return isThatCall && answer.Body.Length > 0 ? Success(call, answer, mediaType) : [];
    }

    private static IEnumerable<string> Problem(Answer answer) =>
    [
        .. Faults("Problem", answer.Json),
        .. answer.Status == 422 && !answer.Faults.Any() && (string?)answer.Json["code"] != TooMuchWork
            ? (string[])["a status 422 that names no fault"]
            : [],
    ];

    private static IEnumerable<string> Success(ContractCall call, Answer answer, string mediaType)
    {
        if (call.Schema(answer.Status, mediaType) is not { } schema)
            return [$"the contract has no answer {answer.Status} as {mediaType}"];
        if (mediaType is AnswerForms.Drawing or AnswerForms.Sheet) return [];
        if (mediaType == Lines) return Batch(answer.Lines);
        return schema["items"] is null
            ? Faults(((string)schema["$ref"]!).Split('/')[^1], answer.Json)
            : Batch(answer.Json.AsArray().OfType<JsonNode>());
    }

    /// <summary>Each build of a batch has a status of its own.</summary>
    private static IEnumerable<string> Batch(IEnumerable<JsonNode> answers) => answers.SelectMany(
        answer => (int)answer["status"]! < 500
            ? Faults("BatchAnswer", answer)
            : [$"a build of a batch has status {answer["status"]}"]);

    private static IEnumerable<string> Faults(string shape, JsonNode answer) =>
        ContractSchemas.Faults(shape, answer).Select(fault => $"{shape}: {fault}");

    private static bool IsAt(ContractCall call, string path)
    {
        string[] wanted = call.Path.Split('/'), sent = path.Split('/');
        return wanted.Length == sent.Length && wanted.Zip(sent).All(
            step => step.First.StartsWith('{') ? IsPlain(step.Second) : step.First == step.Second);
    }

    private static bool IsPlain(string step) =>
        step.Length > 0 && step.All(letter => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_' or '.');
}
