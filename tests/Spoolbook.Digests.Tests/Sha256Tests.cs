using System.Security.Cryptography;
using System.Text;
using CsCheck;

namespace Spoolbook.Digests.Tests;

public sealed class Sha256Tests
{
    [Theory]
    // FIPS 180-4 names them; NIST, "Examples with Intermediate Values", SHA-256: one block, two blocks.
    [InlineData("abc", "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad")]
    [InlineData(
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq",
        "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1"
    )]
    // NIST, Cryptographic Algorithm Validation Program, SHA256ShortMsg.rsp, Len = 0.
    [InlineData("", "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855")]
    public void A_digest_is_the_published_one(string text, string digest) =>
        Assert.Equal(digest, Sha256.TextOf(Encoding.ASCII.GetBytes(text)));

    // FIPS 180-2, appendix B.3: a million times the letter a.
    [Fact]
    public void A_long_text_has_the_published_digest() =>
        Assert.Equal(
            "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0",
            Sha256.TextOf(Encoding.ASCII.GetBytes(new string('a', 1_000_000)))
        );

    // Every length around one block and two, where the padding goes into a block of its own.
    [Fact]
    public void A_digest_is_that_of_another_maker_at_every_length()
    {
        var bytes = Enumerable.Range(0, 300).Select(at => (byte)(at * 7 % 256)).ToArray();

        Assert.All(Enumerable.Range(0, bytes.Length), length =>
            Assert.Equal(SHA256.HashData(bytes.AsSpan(0, length)), Sha256.Of(bytes.AsSpan(0, length)))
        );
    }

    [Fact]
    public void Bytes_that_come_in_pieces_have_the_digest_of_the_whole() =>
        Gen
            .Byte.Array[0, 150]
            .Array[0, 6]
            .Sample(pieces =>
            {
                var digest = new Sha256();
                foreach (var piece in pieces)
                {
                    digest.Add(piece);
                }

                return digest.Finish().SequenceEqual(SHA256.HashData([.. pieces.SelectMany(p => p)]));
            });
}
