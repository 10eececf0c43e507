// The arguments of the commands about bundles: keys, seal, install.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

namespace CLI {
class App;
} // namespace CLI

namespace kiosk {

/// pairstand keys make --into FOLDER; keys show [--key KEY]; keys forget.
struct KeysArguments {
    enum class What { Make, Show, Forget };
    What what = What::Show;
    std::string
        into; ///< of make: the folder of the new key; of the others: the station's data folder, empty: the user's
    std::string key; ///< of show: a key file or its folder; empty: the key that this station accepted
    std::string language = "en";
    bool operator==(const KeysArguments&) const = default;
};

/// pairstand seal.
struct SealArguments {
    std::string catalog;
    std::string key;
    std::string name;
    std::string maker;
    std::string out;
    std::string tour;
    std::string texts;
    std::optional<std::uint64_t> counter;
    std::string language = "en";
    bool operator==(const SealArguments&) const = default;
};

/// pairstand install BUNDLE, or --go-back.
struct InstallArguments {
    std::string bundle;
    std::string into; ///< the station's data folder; empty: the user's
    std::string accept;
    bool go_back = false;
    std::string language = "en";
    bool operator==(const InstallArguments&) const = default;
};

/// What each command takes. `languages` are the codes that help names.
void add_keys(CLI::App& command, KeysArguments& keys, const std::string& languages);
void add_seal(CLI::App& command, SealArguments& seal, const std::string& languages);
void add_install(CLI::App& command, InstallArguments& install, const std::string& languages);

} // namespace kiosk
