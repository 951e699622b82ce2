using System.Text;
using Cablewright.Service.Answers;

namespace Cablewright.Service.Batches;

/// <summary>Writes the answers of a batch, each on its way before the next is due.</summary>
/// <param name="response">Where to.</param>
/// <param name="form">How.</param>
internal sealed class BatchWriter(HttpResponse response, BatchForm form)
{
    private bool hasStarted;

    /// <summary>Writes one answer and sends it off.</summary>
    public async Task Write(byte[] answer, CancellationToken cancellation)
    {
        await Text(hasStarted ? form.Between : Begin(), cancellation).ConfigureAwait(false);
        await response.Body.WriteAsync(answer, cancellation).ConfigureAwait(false);
        await Text(form.AfterEach, cancellation).ConfigureAwait(false);
        await response.Body.FlushAsync(cancellation).ConfigureAwait(false);
    }

    /// <summary>Writes what stands after the last answer.</summary>
    public Task End(CancellationToken cancellation) => Text(hasStarted ? form.End : Begin() + form.End, cancellation);

    private string Begin()
    {
        hasStarted = true;
        response.ContentType = form.MediaType;
        response.Headers.CacheControl = Caching.AskAgain;
        return form.Start;
    }

    private Task Text(string text, CancellationToken cancellation) =>
        text.Length == 0 ? Task.CompletedTask : response.Body.WriteAsync(Encoding.UTF8.GetBytes(text), cancellation).AsTask();
}
