// The keys of bundles: a leader's signing key, kept in two files, and the fingerprint that people read aloud.
// Source: Ed25519, RFC 8032, of libsodium. The form of the files is in docs/bundle.md.
#pragma once

#include "catalog/bundle/digest.h"
#include "core/error.h"

#include <array>
#include <cstdint>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>

namespace catalog {

/// What a station keeps of a leader: with it seals are checked. No secret.
using PublicKey = std::array<std::uint8_t, 32>;

/// A seal: an Ed25519 signature.
using Signature = std::array<std::uint8_t, 64>;

/// What the leader keeps to herself: whoever has it seals in her name. Wiped from memory at the end.
class SigningKey {
public:
    explicit SigningKey(const Digest& seed);
    SigningKey(SigningKey&& other) noexcept;
    SigningKey& operator=(SigningKey&&) = delete;
    ~SigningKey();
    [[nodiscard]] const PublicKey& public_key() const { return public_key_; }
    [[nodiscard]] Signature sign(std::span<const std::uint8_t> bytes) const;

private:
    std::array<std::uint8_t, 64> secret_;
    PublicKey public_key_;
};

/// Whether the holder of the key put this signature under these bytes.
[[nodiscard]] bool is_signed_by(const PublicKey& key, const Signature& signature, std::span<const std::uint8_t> bytes);

/// Six groups of four digits, "0482 9313 ...": the same in every language, and 80 bits of BLAKE2b of the key, too many
/// to find another key with the same ones.
[[nodiscard]] std::string fingerprint(const PublicKey& key);

/// Whether somebody typed this key's fingerprint; blanks and hyphens between digits are as people like.
[[nodiscard]] bool is_fingerprint_of(const PublicKey& key, std::string_view typed);

/// Names of the two files in a folder of keys, and of the one that counts what was sealed.
inline constexpr const char* secret_key_file = "pairstand.secret";
inline constexpr const char* public_key_file = "pairstand.public";

/// Makes a new key and writes both files into the folder, which is made when it is not there: the secret one is for its
/// owner's eyes only. Errors: AlreadyThere (a key is never written over), CannotWrite.
[[nodiscard]] core::Result<PublicKey> make_keys(const std::filesystem::path& folder);

/// Reads the secret file, or the one in this folder. Errors: NoKey, NoSuchFile, CannotRead.
[[nodiscard]] core::Result<SigningKey> read_signing_key(const std::filesystem::path& file_or_folder);

/// Reads the public file, or the one in this folder. Errors: NoKey, NoSuchFile, CannotRead.
[[nodiscard]] core::Result<PublicKey> read_public_key(const std::filesystem::path& file_or_folder);

} // namespace catalog
