#include "catalog/bundle/keys.h"

#include "catalog/file/safe_write.h"

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <fstream>
#include <sodium.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace catalog {
namespace {

namespace fs = std::filesystem;
using Kind = core::Error::Kind;

constexpr std::string_view secret_line = "pairstand secret key 1\n";
constexpr std::string_view public_line = "pairstand public key 1\n";
constexpr int groups = 6;
constexpr int bytes_a_group = 5; // so many that no group of four digits is likelier than another by a billionth

auto refuse(Kind kind, const fs::path& path, const std::string& detail)
{
    return core::refuse(kind, detail, core::Place{path.string(), 0, {}, {}, {}});
}

auto cannot_write(const fs::path& path)
{
    const int why = errno;
    const bool there = why == EEXIST;
    return refuse(there ? Kind::AlreadyThere : Kind::CannotWrite, path, std::generic_category().message(why));
}

/// Writes a file that is not there yet, for these eyes, and sees it onto the disk.
core::Result<void> write_new(const fs::path& path, std::string_view text, mode_t mode)
{
    const int handle = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_NOFOLLOW | O_CLOEXEC, mode);
    if (handle < 0)
        return cannot_write(path);
    const bool written = ::fchmod(handle, mode) == 0 && // whatever the umask
                         ::write(handle, text.data(), text.size()) == static_cast<ssize_t>(text.size()) &&
                         ::fsync(handle) == 0;
    const int why = errno;
    ::close(handle);
    if (written)
        return {};
    ::unlink(path.c_str());
    errno = why;
    return cannot_write(path);
}

/// The thirty-two bytes of a key file of one kind.
core::Result<Digest> read_key(const fs::path& path, std::string_view first_line)
{
    std::error_code unknown;
    if (fs::status(path, unknown).type() == fs::file_type::not_found)
        return refuse(Kind::NoSuchFile, path, "there is no such file");
    std::ifstream file(path, std::ios::binary);
    if (!file || fs::is_directory(path, unknown))
        return refuse(Kind::CannotRead, path, std::generic_category().message(errno));
    std::array<char, 128> text{}; // longer than any key file
    file.read(text.data(), text.size());
    std::string_view found(text.data(), static_cast<std::size_t>(file.gcount()));
    std::optional<Digest> key;
    if (found.starts_with(first_line)) {
        found.remove_prefix(first_line.size());
        if (found.ends_with('\n'))
            found.remove_suffix(1);
        key = bytes_of_hex(found);
    }
    ::sodium_memzero(text.data(), text.size());
    if (!key)
        return refuse(Kind::NoKey, path, "it is no key");
    return *key;
}

fs::path file_in(const fs::path& file_or_folder, const char* name)
{
    std::error_code unknown;
    return fs::is_directory(file_or_folder, unknown) ? file_or_folder / name : file_or_folder;
}

std::string digits_of(const PublicKey& key)
{
    Digester digester;
    digester.add(bytes_in("pairstand fingerprint 1\n"));
    digester.add(key);
    const Digest digest = digester.finish();
    std::string digits;
    for (std::size_t group = 0; group < groups; ++group) {
        std::uint64_t number = 0;
        for (std::size_t i = 0; i < bytes_a_group; ++i)
            number = number << 8U | digest[group * bytes_a_group + i];
        const auto four = std::to_string(10'000 + number % 10'000);
        digits += four.substr(1);
    }
    return digits;
}

} // namespace

SigningKey::SigningKey(const Digest& seed) : secret_{}, public_key_{}
{
    prepare_sodium();
    ::crypto_sign_seed_keypair(public_key_.data(), secret_.data(), seed.data());
}

SigningKey::SigningKey(SigningKey&& other) noexcept : secret_(other.secret_), public_key_(other.public_key_)
{
    ::sodium_memzero(other.secret_.data(), other.secret_.size());
}

SigningKey::~SigningKey()
{
    ::sodium_memzero(secret_.data(), secret_.size());
}

Signature SigningKey::sign(std::span<const std::uint8_t> bytes) const
{
    Signature signature{};
    ::crypto_sign_detached(signature.data(), nullptr, bytes.data(), bytes.size(), secret_.data());
    return signature;
}

bool is_signed_by(const PublicKey& key, const Signature& signature, std::span<const std::uint8_t> bytes)
{
    prepare_sodium();
    return ::crypto_sign_verify_detached(signature.data(), bytes.data(), bytes.size(), key.data()) == 0;
}

std::string fingerprint(const PublicKey& key)
{
    const std::string digits = digits_of(key);
    std::string text;
    for (std::size_t i = 0; i < digits.size(); i += 4)
        text.append(i > 0 ? " " : "").append(digits, i, 4);
    return text;
}

bool is_fingerprint_of(const PublicKey& key, std::string_view typed)
{
    std::string digits;
    for (const char c : typed)
        if (c != ' ' && c != '-')
            digits += c;
    return digits == digits_of(key);
}

core::Result<PublicKey> make_keys(const fs::path& folder)
{
    prepare_sodium();
    std::error_code later; // if it cannot be made, writing says why
    const bool made = fs::create_directories(folder, later);
    if (made)
        ::chmod(folder.c_str(), 0700);
    for (const char* name : {secret_key_file, public_key_file})
        if (fs::exists(folder / name, later))
            return refuse(Kind::AlreadyThere, folder / name, "a key lies here");
    Digest seed{};
    ::randombytes_buf(seed.data(), seed.size());
    const PublicKey key = SigningKey(seed).public_key();
    auto text = std::string(secret_line) + hex_of(seed) + "\n";
    ::sodium_memzero(seed.data(), seed.size());
    const auto secret = write_new(folder / secret_key_file, text, 0600);
    ::sodium_memzero(text.data(), text.size());
    if (!secret)
        return tl::make_unexpected(secret.error());
    const auto open = write_new(folder / public_key_file, std::string(public_line) + hex_of(key) + "\n", 0644);
    if (!open)
        return tl::make_unexpected(open.error());
    try {
        real_disk().sync_folder(folder);
    } catch (const std::system_error& error) {
        return refuse(Kind::CannotWrite, folder, error.code().message());
    }
    return key;
}

core::Result<SigningKey> read_signing_key(const fs::path& file_or_folder)
{
    auto seed = read_key(file_in(file_or_folder, secret_key_file), secret_line);
    if (!seed)
        return tl::make_unexpected(seed.error());
    SigningKey key(*seed);
    ::sodium_memzero(seed->data(), seed->size());
    return key;
}

core::Result<PublicKey> read_public_key(const fs::path& file_or_folder)
{
    return read_key(file_in(file_or_folder, public_key_file), public_line);
}

} // namespace catalog
