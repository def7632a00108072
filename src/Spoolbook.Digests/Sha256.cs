using Org.BouncyCastle.Crypto.Digests;

namespace Spoolbook.Digests;

/// <summary>
/// SHA-256 (FIPS 180-4) by a library in managed code. The framework's own goes through OpenSSL on Linux, and a program in one file
/// cannot bring that along: where it is missing, the process is aborted at its first digest.
/// </summary>
public sealed class Sha256
{
    readonly Sha256Digest _digest = new();

    /// <summary>The 32 bytes of a digest.</summary>
    public static byte[] Of(ReadOnlySpan<byte> bytes)
    {
        var digest = new Sha256();
        digest.Add(bytes);
        return digest.Finish();
    }

    /// <summary>A digest as <c>sha256sum</c> writes it: 64 small hexadecimal digits.</summary>
    public static string TextOf(ReadOnlySpan<byte> bytes) => Convert.ToHexStringLower(Of(bytes));

    /// <summary>Bytes that follow those before.</summary>
    public void Add(ReadOnlySpan<byte> bytes) => _digest.BlockUpdate(bytes);

    /// <summary>The digest of all that was added. Nothing may be added afterwards.</summary>
    public byte[] Finish()
    {
        var digest = new byte[_digest.GetDigestSize()];
        _digest.DoFinal(digest);
        return digest;
    }
}
