// Keys, seals and digests: those of the standards, and files that only their owner reads.
#include "catalog/bundle/keys.h"
#include "tests/support/temp_folder.h"

#include <doctest/doctest.h>

#include <filesystem>
#include <set>
#include <sys/stat.h>

using catalog::bytes_in;
using catalog::bytes_of_hex;
using catalog::hex_of;
using Kind = core::Error::Kind;

namespace fs = std::filesystem;

namespace {

mode_t mode_of(const fs::path& path)
{
    struct stat found {};
    REQUIRE(::stat(path.c_str(), &found) == 0);
    return found.st_mode & 0777U;
}

} // namespace

// RFC 8032, section 7.1, tests 1 and 2.
TEST_CASE("keys: sign as the standard's examples do")
{
    struct Case {
        const char* seed;
        const char* key;
        std::string message;
        const char* signature;
    };
    const Case cases[] = {
        {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
         "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
         "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bb"
         "e"
         "24655141438e7a100b"},
        {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
         "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "\x72",
         "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302"
         "a"
         "eeb00d291612bb0c00"},
    };
    for (const auto& c : cases) {
        CAPTURE(c.seed);
        const catalog::SigningKey key(*bytes_of_hex(c.seed));
        CHECK(hex_of(key.public_key()) == c.key);
        const auto signature = key.sign(bytes_in(c.message));
        CHECK(hex_of(signature) == c.signature);
        CHECK(catalog::is_signed_by(key.public_key(), signature, bytes_in(c.message)));
        CHECK_FALSE(catalog::is_signed_by(key.public_key(), signature, bytes_in(c.message + "x")));
        auto other = signature;
        other[5] ^= 1U;
        CHECK_FALSE(catalog::is_signed_by(key.public_key(), other, bytes_in(c.message)));
    }
}

// RFC 7693 defines BLAKE2b with 32 bytes; these are hashlib.blake2b(digest_size=32) of Python 3.11, another reading of
// it.
TEST_CASE("digest: BLAKE2b, the same in one piece and in many")
{
    CHECK(hex_of(catalog::digest_of({})) == "0e5751c026e543b2e8ab2eb06099daa1d1e5df47778f7787faab45cdf12fe3a8");
    CHECK(hex_of(catalog::digest_of(bytes_in("abc"))) ==
          "bddd813c634239723171ef3fee98579b94964e3bb1cb3e427262c8c068d52319");
    catalog::Digester pieces;
    for (const char* piece : {"a", "", "bc"})
        pieces.add(bytes_in(piece));
    CHECK(pieces.finish() == catalog::digest_of(bytes_in("abc")));
    CHECK_FALSE(bytes_of_hex("00"));
    CHECK_FALSE(bytes_of_hex(std::string(64, 'g')));
    CHECK_FALSE(bytes_of_hex(std::string(64, 'A'))); // one form only
}

TEST_CASE("keys: the secret file is its owner's alone, and is never written over")
{
    const test::TempFolder folder;
    const auto keys = fs::path(folder.file("keys"));
    const mode_t before = ::umask(0); // the worst that a user can have set
    const auto made = catalog::make_keys(keys);
    ::umask(before);
    REQUIRE(made);
    CHECK(mode_of(keys) == 0700U);
    CHECK(mode_of(keys / "pairstand.secret") == 0600U);
    CHECK(mode_of(keys / "pairstand.public") == 0644U);
    CHECK(catalog::read_signing_key(keys)->public_key() == *made);
    CHECK(catalog::read_signing_key(keys / "pairstand.secret")->public_key() == *made);
    CHECK(catalog::read_public_key(keys).value() == *made);

    const auto secret = test::bytes_of(keys / "pairstand.secret");
    CHECK(secret.find(hex_of(*made)) == std::string::npos);
    CHECK(catalog::make_keys(keys).error().kind == Kind::AlreadyThere);
    fs::remove(keys / "pairstand.public");
    CHECK(catalog::make_keys(keys).error().kind == Kind::AlreadyThere);
    CHECK(test::bytes_of(keys / "pairstand.secret") == secret);
    CHECK(catalog::make_keys(folder.file("others")).value() != *made);
}

TEST_CASE("keys: what is no key is refused")
{
    const test::TempFolder folder;
    REQUIRE(catalog::make_keys(folder.file("keys")));
    const auto secret = test::bytes_of(folder.file("keys/pairstand.secret"));
    CHECK(catalog::read_signing_key(folder.file("none")).error().kind == Kind::NoSuchFile);
    CHECK(catalog::read_signing_key(folder.file("keys/pairstand.public")).error().kind == Kind::NoKey);
    CHECK(catalog::read_public_key(folder.file("keys/pairstand.secret")).error().kind == Kind::NoKey);
    for (const auto& text : {std::string(), secret.substr(0, 40), secret + "0", "x" + secret, secret + "\n"})
        CHECK(catalog::read_signing_key(folder.write("torn", text)).error().kind == Kind::NoKey);
    CHECK(catalog::read_signing_key(folder.write("no line end", secret.substr(0, secret.size() - 1))));
}

TEST_CASE("keys: a fingerprint is six groups of four digits, typed as people type them")
{
    const catalog::SigningKey key(*bytes_of_hex("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60"));
    const auto print = catalog::fingerprint(key.public_key());
    CHECK(print == "2817 0420 0030 3959 8402 7177"); // worked out by hashlib of Python 3.11 as docs/bundle.md says
    CHECK(catalog::is_fingerprint_of(key.public_key(), print));
    auto typed = print;
    for (auto& c : typed)
        c = c == ' ' ? '-' : c;
    CHECK(catalog::is_fingerprint_of(key.public_key(), typed));
    typed = print;
    std::erase(typed, ' ');
    CHECK(catalog::is_fingerprint_of(key.public_key(), " " + typed + " "));
    CHECK_FALSE(catalog::is_fingerprint_of(key.public_key(), ""));
    CHECK_FALSE(catalog::is_fingerprint_of(key.public_key(), print.substr(0, 24))); // all of it, or nothing
    CHECK_FALSE(catalog::is_fingerprint_of(key.public_key(), print + "1"));
    for (std::size_t i = 0; i < print.size(); ++i) {
        if (print[i] == ' ')
            continue;
        typed = print;
        typed[i] = typed[i] == '7' ? '8' : '7';
        CHECK_FALSE(catalog::is_fingerprint_of(key.public_key(), typed));
    }
    std::set<std::string> prints; // of keys that differ in one bit
    for (unsigned bit = 0; bit < 256; ++bit) {
        auto other = key.public_key();
        other[bit / 8] ^= static_cast<std::uint8_t>(1U << bit % 8);
        prints.insert(catalog::fingerprint(other));
    }
    CHECK(prints.size() == 256);
}
