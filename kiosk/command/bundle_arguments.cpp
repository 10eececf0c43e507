#include "kiosk/command/bundle_arguments.h"

#include "kiosk/command/foot.h"

#include <CLI/CLI.hpp>

namespace kiosk {
namespace {

constexpr const char* data_help = "the station's data folder; else 'pairstand' in your own folder of data";

void add_language(CLI::App& command, std::string& code, const std::string& languages)
{
    command.add_option("--lang", code, "language of the answer" + (languages.empty() ? "" : ": " + languages))
        ->capture_default_str();
}

} // namespace

void add_keys(CLI::App& command, KeysArguments& keys, const std::string& languages)
{
    command.require_subcommand(1);
    command.fallthrough();
    add_language(command, keys.language, languages);
    auto* const make = command.add_subcommand("make", "make a new key for sealing, and tell its fingerprint");
    make->add_option("--into", keys.into, "a folder of your own for it, not on a stick that stations see")->required();
    make->callback([&keys] { keys.what = KeysArguments::What::Make; });
    auto* const show = command.add_subcommand("show", "tell the fingerprint of a key, to be read aloud");
    show->add_option("--key", keys.key, "the key's folder or file; else the key that this station accepted");
    show->add_option("--into", keys.into, data_help);
    show->callback([&keys] { keys.what = KeysArguments::What::Show; });
    auto* const forget =
        command.add_subcommand("forget", "forget the key that this station accepted, so that another can be accepted");
    forget->add_option("--into", keys.into, data_help);
    command.footer(foot);
    forget->callback([&keys] { keys.what = KeysArguments::What::Forget; });
}

void add_seal(CLI::App& command, SealArguments& seal, const std::string& languages)
{
    command.add_option("--catalog", seal.catalog, "the catalog that goes in")->required();
    command.add_option("--key", seal.key, "the folder that 'pairstand keys make' wrote, or its secret file")
        ->required();
    command.add_option("--name", seal.name, "name of the bundle, as stations show it")->required();
    command.add_option("--maker", seal.maker, "who seals it, as stations show it")->required();
    command.add_option("--out", seal.out, "the bundle to write; an older one is replaced")->required();
    command.add_option("--tour", seal.tour, "a tour as a sheet");
    command.add_option("--texts", seal.texts, "a folder with texts of your own");
    command.add_option("--counter", seal.counter,
                       "its number: a station takes only larger ones than it had; counted up "
                       "from the last one of this key when left out");
    add_language(command, seal.language, languages);
    command.footer("Labels for this place only stay out of every bundle. docs/bundle.md describes the file.\n" +
                   std::string(foot));
}

void add_install(CLI::App& command, InstallArguments& install, const std::string& languages)
{
    auto* const bundle = command.add_option("BUNDLE", install.bundle, "the file that 'pairstand seal' wrote");
    auto* const back = command.add_flag("--go-back", install.go_back, "put the one before in place again");
    command.add_option("--accept", install.accept, "fingerprint of the first key, as its maker read it out")
        ->excludes(back);
    command.add_option("--into", install.into, data_help);
    add_language(command, install.language, languages);
    bundle->excludes(back);
    command.callback([&install] {
        if (install.bundle.empty() && !install.go_back)
            throw CLI::RequiredError("BUNDLE or --go-back");
    });
    command.footer("All of the bundle is checked before anything changes; what is in place is kept until the next one "
                   "is. The station takes the new one by itself.\n" +
                   std::string(foot));
}

} // namespace kiosk
