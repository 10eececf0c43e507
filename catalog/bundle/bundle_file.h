// A bundle's bytes: the head with its seal, the manifest, the parts one behind the other, the end mark.
// One pass from front to back tells a whole bundle from a damaged one and from one that was copied only in part, in
// memory that does not grow with it. docs/bundle.md describes every byte.
#pragma once

#include "catalog/bundle/keys.h"
#include "catalog/bundle/manifest.h"
#include "catalog/file/byte_stream.h"

#include <cstdint>
#include <span>
#include <string>

namespace catalog {

/// The head and the manifest of a bundle whose seal was checked: whoever holds `key` wrote `text`.
struct SealedText {
    PublicKey key;
    std::string text; ///< the manifest, not yet read
};

/// Reads head and manifest, and checks the seal. Nothing of the manifest is looked at yet: who sealed it comes first.
/// Errors, with `name` as their source: NoBundle, CutBundle, DamagedBundle, NewerBundle, CannotRead.
[[nodiscard]] core::Result<SealedText> read_seal(ByteStream& source, const std::string& name);

/// How many bytes a bundle with this manifest has, `text_bytes` of them the manifest.
[[nodiscard]] std::uint64_t bundle_bytes(const Manifest& manifest, std::size_t text_bytes);

/// Whether the source is as long as it has to be. Errors: CutBundle, DamagedBundle.
[[nodiscard]] core::Result<void> check_length(const ByteStream& source, const Manifest& manifest,
                                              std::size_t text_bytes, const std::string& name);

/// Who takes the parts of a bundle. What was taken counts only once `read_parts` returned without an error.
class PartTaker {
public:
    PartTaker() = default;
    PartTaker(const PartTaker&) = delete;
    PartTaker& operator=(const PartTaker&) = delete;
    virtual ~PartTaker() = default;
    [[nodiscard]] virtual core::Result<void> begin(const Part& part) = 0;
    [[nodiscard]] virtual core::Result<void> take(std::span<const std::uint8_t> bytes) = 0;
    [[nodiscard]] virtual core::Result<void> end() = 0;
};

/// Reads the parts, which lie behind the manifest, and checks each by its digest.
/// Errors: CutBundle (its end was never written), DamagedBundle with the part as place.found, CannotRead (also when the
/// source ends sooner than it said), and those of the taker.
[[nodiscard]] core::Result<void> read_parts(ByteStream& source, const Manifest& manifest, const std::string& name,
                                            PartTaker& taker);

/// What stands in front of the parts: head, seal and manifest.
[[nodiscard]] std::string bundle_head(const SigningKey& key, const std::string& manifest);

/// What stands behind them.
[[nodiscard]] std::string bundle_end();

} // namespace catalog
