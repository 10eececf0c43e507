#include "catalog/bundle/digest.h"

#include <algorithm>
#include <sodium.h>
#include <stdexcept>

namespace catalog {

struct Digester::Inside {
    crypto_generichash_state state;
};

Digester::Digester() : inside_(std::make_unique<Inside>())
{
    prepare_sodium();
    crypto_generichash_init(&inside_->state, nullptr, 0, std::tuple_size_v<Digest>);
}

Digester::~Digester() = default;

void Digester::add(std::span<const std::uint8_t> bytes)
{
    crypto_generichash_update(&inside_->state, bytes.data(), bytes.size());
}

Digest Digester::finish()
{
    Digest digest{};
    crypto_generichash_final(&inside_->state, digest.data(), digest.size());
    return digest;
}

Digest digest_of(std::span<const std::uint8_t> bytes)
{
    Digester digester;
    digester.add(bytes);
    return digester.finish();
}

std::string hex_of(std::span<const std::uint8_t> bytes)
{
    constexpr std::string_view signs = "0123456789abcdef";
    std::string hex;
    for (const auto byte : bytes) {
        hex += signs[byte >> 4U];
        hex += signs[byte & 15U];
    }
    return hex;
}

std::optional<Digest> bytes_of_hex(std::string_view hex)
{
    const auto is_sign = [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); };
    const auto value = [](char c) { return static_cast<unsigned>(c <= '9' ? c - '0' : c - 'a' + 10); };
    Digest bytes{};
    if (hex.size() != 2 * bytes.size() || !std::ranges::all_of(hex, is_sign))
        return std::nullopt;
    for (std::size_t i = 0; i < bytes.size(); ++i)
        bytes[i] = static_cast<std::uint8_t>(value(hex[2 * i]) << 4U | value(hex[2 * i + 1]));
    return bytes;
}

void prepare_sodium()
{
    if (::sodium_init() < 0)
        throw std::runtime_error("this machine gives no random numbers, so nothing can be sealed or checked");
}

} // namespace catalog
