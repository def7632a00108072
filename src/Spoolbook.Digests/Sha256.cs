using System.Buffers.Binary;
using System.Numerics;

namespace Spoolbook.Digests;

/// <summary>
/// SHA-256 (FIPS 180-4) in managed code. The framework's own goes through OpenSSL on Linux, and a program in one file cannot bring that
/// along: where it is missing, the process is aborted at its first digest. What is digested here says whether bytes are the same, and
/// keeps no secret.
/// </summary>
public sealed class Sha256
{
    const int BlockSize = 64;

    // FIPS 180-4, 4.2.2: the first 32 bits of the fractional parts of the cube roots of the first sixty-four primes.
    static readonly uint[] _constants =
    [
        0x428a2f98,
        0x71374491,
        0xb5c0fbcf,
        0xe9b5dba5,
        0x3956c25b,
        0x59f111f1,
        0x923f82a4,
        0xab1c5ed5,
        0xd807aa98,
        0x12835b01,
        0x243185be,
        0x550c7dc3,
        0x72be5d74,
        0x80deb1fe,
        0x9bdc06a7,
        0xc19bf174,
        0xe49b69c1,
        0xefbe4786,
        0x0fc19dc6,
        0x240ca1cc,
        0x2de92c6f,
        0x4a7484aa,
        0x5cb0a9dc,
        0x76f988da,
        0x983e5152,
        0xa831c66d,
        0xb00327c8,
        0xbf597fc7,
        0xc6e00bf3,
        0xd5a79147,
        0x06ca6351,
        0x14292967,
        0x27b70a85,
        0x2e1b2138,
        0x4d2c6dfc,
        0x53380d13,
        0x650a7354,
        0x766a0abb,
        0x81c2c92e,
        0x92722c85,
        0xa2bfe8a1,
        0xa81a664b,
        0xc24b8b70,
        0xc76c51a3,
        0xd192e819,
        0xd6990624,
        0xf40e3585,
        0x106aa070,
        0x19a4c116,
        0x1e376c08,
        0x2748774c,
        0x34b0bcb5,
        0x391c0cb3,
        0x4ed8aa4a,
        0x5b9cca4f,
        0x682e6ff3,
        0x748f82ee,
        0x78a5636f,
        0x84c87814,
        0x8cc70208,
        0x90befffa,
        0xa4506ceb,
        0xbef9a3f7,
        0xc67178f2,
    ];

    // FIPS 180-4, 5.3.3: the same of the square roots of the first eight.
    readonly uint[] _state = [0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19];

    // The bytes that do not fill a block yet.
    readonly byte[] _waiting = new byte[BlockSize];
    long _length;

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
    public void Add(ReadOnlySpan<byte> bytes)
    {
        var waiting = (int)(_length % BlockSize);
        _length += bytes.Length;
        if (waiting > 0)
        {
            var taken = Math.Min(BlockSize - waiting, bytes.Length);
            bytes[..taken].CopyTo(_waiting.AsSpan(waiting));
            bytes = bytes[taken..];
            if (waiting + taken < BlockSize)
            {
                return;
            }

            Mix(_waiting);
        }

        for (; bytes.Length >= BlockSize; bytes = bytes[BlockSize..])
        {
            Mix(bytes[..BlockSize]);
        }

        bytes.CopyTo(_waiting);
    }

    /// <summary>The digest of all that was added. Nothing may be added afterwards.</summary>
    public byte[] Finish()
    {
        // FIPS 180-4, 5.1.1: a one, zeros, and the length in bits fill the last block.
        var bits = _length * 8;
        var waiting = (int)(_length % BlockSize);
        var padding = new byte[(waiting < BlockSize - 8 ? BlockSize : 2 * BlockSize) - waiting];
        padding[0] = 0x80;
        BinaryPrimitives.WriteInt64BigEndian(padding.AsSpan(padding.Length - 8), bits);
        Add(padding);

        var digest = new byte[32];
        for (var at = 0; at < _state.Length; at++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(digest.AsSpan(4 * at), _state[at]);
        }

        return digest;
    }

    // FIPS 180-4, 6.2.2, with its names.
    void Mix(ReadOnlySpan<byte> block)
    {
        unchecked
        {
            Span<uint> w = stackalloc uint[64];
            for (var t = 0; t < 16; t++)
            {
                w[t] = BinaryPrimitives.ReadUInt32BigEndian(block[(4 * t)..]);
            }

            for (var t = 16; t < 64; t++)
            {
                var (near, far) = (w[t - 2], w[t - 15]);
                var small1 = BitOperations.RotateRight(near, 17) ^ BitOperations.RotateRight(near, 19) ^ (near >> 10);
                var small0 = BitOperations.RotateRight(far, 7) ^ BitOperations.RotateRight(far, 18) ^ (far >> 3);
                w[t] = small1 + w[t - 7] + small0 + w[t - 16];
            }

            var s = _state;
            uint a = s[0],
                b = s[1],
                c = s[2],
                d = s[3],
                e = s[4],
                f = s[5],
                g = s[6],
                h = s[7];
            for (var t = 0; t < 64; t++)
            {
                var big1 = BitOperations.RotateRight(e, 6) ^ BitOperations.RotateRight(e, 11) ^ BitOperations.RotateRight(e, 25);
                var chosen = (e & f) ^ (~e & g);
                var t1 = h + big1 + chosen + _constants[t] + w[t];
                var big0 = BitOperations.RotateRight(a, 2) ^ BitOperations.RotateRight(a, 13) ^ BitOperations.RotateRight(a, 22);
                var majority = (a & b) ^ (a & c) ^ (b & c);
                var t2 = big0 + majority;
                h = g;
                g = f;
                f = e;
                e = d + t1;
                d = c;
                c = b;
                b = a;
                a = t1 + t2;
            }

            s[0] += a;
            s[1] += b;
            s[2] += c;
            s[3] += d;
            s[4] += e;
            s[5] += f;
            s[6] += g;
            s[7] += h;
        }
    }
}
