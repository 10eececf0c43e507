// Digests of bytes, taken while they stream by: BLAKE2b with 32 bytes, of libsodium (RFC 7693).
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace catalog {

/// Thirty-two bytes that name some other bytes.
using Digest = std::array<std::uint8_t, 32>;

/// Bytes of a text.
[[nodiscard]] inline std::span<const std::uint8_t> bytes_in(std::string_view text)
{
    return {reinterpret_cast<const std::uint8_t*>(text.data()), text.size()};
}

/// Takes bytes piece by piece; memory does not grow with them.
class Digester {
public:
    Digester();
    Digester(const Digester&) = delete;
    Digester& operator=(const Digester&) = delete;
    ~Digester();
    void add(std::span<const std::uint8_t> bytes);
    /// The digest of all that was added. Once.
    [[nodiscard]] Digest finish();

private:
    struct Inside;
    std::unique_ptr<Inside> inside_;
};

/// The digest of bytes that lie in memory.
[[nodiscard]] Digest digest_of(std::span<const std::uint8_t> bytes);

/// Bytes as pairs of 0 to 9 and a to f.
[[nodiscard]] std::string hex_of(std::span<const std::uint8_t> bytes);

/// Thirty-two bytes of 64 such signs; nothing when the text is anything else.
[[nodiscard]] std::optional<Digest> bytes_of_hex(std::string_view hex);

/// Makes libsodium ready; cheap to call again. Throws std::runtime_error when the machine has no good random numbers.
void prepare_sodium();

} // namespace catalog
