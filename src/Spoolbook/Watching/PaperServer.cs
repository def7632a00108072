using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Spoolbook.Watching;

/// <summary>
/// Shows the papers to a browser on this machine, and to nobody else: it listens on 127.0.0.1 only, answers no request that was meant
/// for another host (a foreign page could point its own name here), and gives out nothing but papers.
/// </summary>
internal sealed class PaperServer : IDisposable
{
    /// <summary>The port unless another is asked for.</summary>
    public const int UsualPort = 8016;

    const int MostHead = 8_192,
        MostAtOnce = 64;

    static readonly TimeSpan _slowest = TimeSpan.FromSeconds(10);

    // A browser gives up on an answer after a while.
    static readonly TimeSpan _longestWait = TimeSpan.FromSeconds(25);

    readonly string _folder;
    readonly TcpListener _listener;
    readonly CancellationTokenSource _stop = new();
    readonly SemaphoreSlim _free = new(MostAtOnce);
    readonly Task _listening;

    // Of another start of the program a page cannot know the count, so it does not begin at nought.
    long _made = Environment.TickCount64;
    TaskCompletionSource _next = new(TaskCreationOptions.RunContinuationsAsynchronously);

    PaperServer(string folder, TcpListener listener)
    {
        (_folder, _listener) = (folder, listener);
        Port = ((IPEndPoint)listener.LocalEndpoint).Port;
        _listening = Task.Run(Listen);
    }

    public int Port { get; }

    /// <summary>Starts to listen.</summary>
    /// <param name="port">The port; null for the usual one, or any that is free where that one is taken.</param>
    /// <exception cref="IOException">The port that was asked for is taken or not allowed.</exception>
    public static PaperServer Start(string folder, int? port)
    {
        try
        {
            return new PaperServer(folder, Listening(port ?? UsualPort));
        }
        catch (SocketException) when (port is null)
        {
            return new PaperServer(folder, Listening(0));
        }
        catch (SocketException taken)
        {
            throw new IOException($"port {port} cannot be used: {taken.Message}", taken);
        }
    }

    static TcpListener Listening(int port)
    {
        var listener = new TcpListener(IPAddress.Loopback, port) { ExclusiveAddressUse = true };
        listener.Start();
        return listener;
    }

    /// <summary>Tells the pages that are open to load themselves anew.</summary>
    public void Remade()
    {
        Interlocked.Increment(ref _made);
        Interlocked.Exchange(ref _next, new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously)).SetResult();
    }

    public void Dispose()
    {
        _stop.Cancel();
        _listener.Stop();
        _listening.Wait();
        _stop.Dispose();
        _listener.Dispose();
        _free.Dispose();
    }

    async Task Listen()
    {
        var open = new List<Task>();
        while (!_stop.IsCancellationRequested)
        {
            try
            {
                var client = await _listener.AcceptTcpClientAsync(_stop.Token).ConfigureAwait(false);
                await _free.WaitAsync(_stop.Token).ConfigureAwait(false);
                open.RemoveAll(t => t.IsCompleted);
                open.Add(Answer(client));
            }
            catch (Exception e) when (e is OperationCanceledException or SocketException or ObjectDisposedException)
            {
                // The loop ends, or the next one is waited for.
            }
        }

        await Task.WhenAll(open).ConfigureAwait(false);
    }

    async Task Answer(TcpClient client)
    {
        try
        {
            using (client)
            {
                var stream = client.GetStream();
                using var slow = CancellationTokenSource.CreateLinkedTokenSource(_stop.Token);
                slow.CancelAfter(_slowest);
                var request = PageRequest.Parse(await Head(stream, slow.Token).ConfigureAwait(false), Port);
                if (request.Since is { } since)
                {
                    await Wait(since).ConfigureAwait(false);
                }

                var answer = PageAnswer.To(request, _folder, Interlocked.Read(ref _made));
                using var slowToRead = CancellationTokenSource.CreateLinkedTokenSource(_stop.Token);
                slowToRead.CancelAfter(_slowest);
                await stream.WriteAsync(answer, slowToRead.Token).ConfigureAwait(false);
            }
        }
        catch (Exception e) when (e is IOException or SocketException or OperationCanceledException or UnauthorizedAccessException)
        {
            // Whoever asked has gone, or is too slow to wait for.
        }
        finally
        {
            _free.Release();
        }
    }

    async Task Wait(long since)
    {
        var next = Volatile.Read(ref _next).Task;
        if (since == Interlocked.Read(ref _made))
        {
            await Task.WhenAny(next, Task.Delay(_longestWait, _stop.Token)).ConfigureAwait(false);
        }
    }

    static async Task<string> Head(NetworkStream stream, CancellationToken stop)
    {
        var bytes = new byte[MostHead];
        var length = 0;
        while (length < MostHead)
        {
            var read = await stream.ReadAsync(bytes.AsMemory(length), stop).ConfigureAwait(false);
            if (read == 0)
            {
                break;
            }

            length += read;
            if (bytes.AsSpan(0, length).IndexOf("\r\n\r\n"u8) >= 0)
            {
                return Encoding.Latin1.GetString(bytes, 0, length);
            }
        }

        return "";
    }
}
