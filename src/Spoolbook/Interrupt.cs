using System.Runtime.InteropServices;

namespace Spoolbook;

/// <summary>Ctrl-C, or a stop by the system: the first one ends the work at the next good moment, a second ends the program.</summary>
internal sealed class Interrupt : IDisposable
{
    readonly CancellationTokenSource _stop;
    readonly PosixSignalRegistration[] _signals;

    /// <param name="outer">Another reason to stop.</param>
    public Interrupt(CancellationToken outer)
    {
        _stop = CancellationTokenSource.CreateLinkedTokenSource(outer);
        _signals = [On(PosixSignal.SIGINT), On(PosixSignal.SIGTERM)];
    }

    /// <summary>Is cancelled by the first one.</summary>
    public CancellationToken Token => _stop.Token;

    public void Dispose()
    {
        foreach (var signal in _signals)
        {
            signal.Dispose();
        }

        _stop.Dispose();
    }

    PosixSignalRegistration On(PosixSignal signal) => PosixSignalRegistration.Create(signal, context =>
        {
            context.Cancel = !_stop.IsCancellationRequested;
            _stop.Cancel();
        });
}
